package fairpull.ui.page.shelf;

import fairpull.app.usecase.shelf.ListedTest;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;

/** The rows of the list: each test that was found, and what is known of it as soon as it is. */
final class TestRows extends AbstractTableModel {
    private List<Path> folders = List.of();
    private final transient Map<Path, ListedTest> known = new HashMap<>();
    private final transient Map<Path, Integer> places = new HashMap<>();
    private transient Map<Path, String> apart = Map.of();

    /** The columns, in their order. */
    enum Column {
        TEST, STATE, VERDICT, CHANGE, MARK, DATE
    }

    /**
     * A row.
     *
     * @param folder of the test
     * @param test what is known of it; empty until it is
     * @param apart where it lies, where another test has its title; else empty
     */
    record Row(Path folder, Optional<ListedTest> test, String apart) {
    }

    /** Has these tests and no others; what was known of them is shown until it is told anew. */
    void have(List<Path> found) {
        folders = List.copyOf(found);
        places.clear();
        for (int place = 0; place < folders.size(); place++) {
            places.put(folders.get(place), place);
        }
        known.keySet().retainAll(places.keySet());
        apart = ToldApart.among(titles());
        fireTableDataChanged();
    }

    /** Tells of some tests; those that are no longer there are passed over. */
    void tell(List<ListedTest> tests) {
        for (ListedTest test : tests) {
            Integer place = places.get(test.folder());
            if (place != null && !test.equals(known.put(test.folder(), test))) {
                fireTableRowsUpdated(place, place);
            }
        }
        Map<Path, String> now = ToldApart.among(titles());
        if (!now.equals(apart)) {
            apart = now;
            fireTableRowsUpdated(0, folders.size() - 1);
        }
    }

    private Map<Path, String> titles() {
        Map<Path, String> titles = new LinkedHashMap<>();
        folders.forEach(folder -> titles.put(folder, Optional.ofNullable(known.get(folder)).map(ListedTest::title)
                .orElse(String.valueOf(folder.getFileName()))));
        return titles;
    }

    /** {@return all that is known} */
    List<ListedTest> tests() {
        List<ListedTest> tests = new ArrayList<>();
        folders.forEach(folder -> Optional.ofNullable(known.get(folder)).ifPresent(tests::add));
        return tests;
    }

    Row row(int place) {
        Path folder = folders.get(place);
        return new Row(folder, Optional.ofNullable(known.get(folder)), apart.getOrDefault(folder, ""));
    }

    @Override
    public int getRowCount() {
        return folders.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return Words.of("shelf.column." + Column.values()[column].name());
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return Row.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
        return row(row);
    }
}

package fairpull.ui.page.shelf;

import fairpull.app.document.Settings;
import fairpull.ui.form.Keys;
import fairpull.ui.page.shelf.TestRows.Column;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.SwingConstants;
import javax.swing.table.TableRowSorter;

/** The list: a row a test, sorted by whichever column. Enter or a double click opens one. */
final class TestTable extends JTable {
    private static final int ROW = 44;
    private static final int DAY = 94;
    private static final List<Integer> WIDTHS = List.of(310, 190, 230, 200, 170, DAY);

    private final TestRows rows;
    private final transient TableRowSorter<TestRows> sorter;
    private final transient RowWords words;

    TestTable(TestRows rows, Settings settings, Consumer<Path> opening) {
        super(rows);
        this.rows = rows;
        words = new RowWords(settings);
        setName("shelf.list");
        getAccessibleContext().setAccessibleName(Words.of("shelf.list"));
        setToolTipText(Words.tip(Words.of("shelf.list.tip")));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setShowHorizontalLines(true);
        sorter = new TableRowSorter<>(rows);
        // rows that fill in must not jump under the eye; they are put in order once all are there
        sorter.setSortsOnUpdates(false);
        for (Column column : Column.values()) {
            int place = column.ordinal();
            sorter.setComparator(place, words.order(column));
            getColumnModel().getColumn(place).setCellRenderer(column == Column.MARK ? new MarkCell() : new TwoLines(words));
            getColumnModel().getColumn(place).setPreferredWidth(WIDTHS.get(place));
        }
        setRowSorter(sorter);
        if (getTableHeader().getDefaultRenderer() instanceof JLabel head) {
            head.setHorizontalAlignment(SwingConstants.LEADING);
        }
        Keys.bind(this, "ENTER", () -> chosen().ifPresent(opening));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    at(rowAtPoint(event.getPoint())).ifPresent(row -> opening.accept(row.folder()));
                }
            }
        });
        dress();
    }

    private void dress() {
        setRowHeight((int) Math.round(ROW * Look.scale()));
        // a day that is cut says nothing
        getColumnModel().getColumn(Column.DATE.ordinal()).setMinWidth((int) Math.round(DAY * Look.scale()));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (rows != null) {
            dress();
        }
    }

    private Optional<Row> at(int shown) {
        return shown < 0 ? Optional.empty() : Optional.of(rows.row(convertRowIndexToModel(shown)));
    }

    /** {@return the test that is chosen} */
    Optional<Path> chosen() {
        return at(getSelectedRow()).map(Row::folder);
    }

    /** Chooses the row of a test, or the first one. */
    void choose(Optional<Path> folder) {
        for (int shown = 0; shown < getRowCount(); shown++) {
            if (folder.equals(at(shown).map(Row::folder))) {
                setRowSelectionInterval(shown, shown);
                return;
            }
        }
        if (getRowCount() > 0) {
            setRowSelectionInterval(0, 0);
        }
    }

    /** Shows only some rows. */
    void filter(Predicate<Row> wanted) {
        Optional<Path> before = chosen();
        sorter.setRowFilter(new RowFilter<>() {
            @Override
            public boolean include(Entry<? extends TestRows, ? extends Integer> entry) {
                return wanted.test(entry.getModel().row(entry.getIdentifier()));
            }
        });
        choose(before);
    }

    /** Puts all rows in order that filled in meanwhile. */
    void settle() {
        Optional<Path> before = chosen();
        sorter.sort();
        choose(before);
    }

    /** Has somebody told of the row that is chosen, now and whenever it is another one or says something else. */
    void listen(Consumer<Optional<Row>> chosen) {
        getSelectionModel().addListSelectionListener(event -> chosen.accept(at(getSelectedRow())));
        rows.addTableModelListener(event -> chosen.accept(at(getSelectedRow())));
    }

    RowWords words() {
        return words;
    }

    /** A line that is cut is whole here. */
    @Override
    public String getToolTipText(MouseEvent event) {
        Optional<Row> row = at(rowAtPoint(event.getPoint()));
        int shown = columnAtPoint(event.getPoint());
        if (row.isEmpty() || shown < 0) {
            return super.getToolTipText(event);
        }
        Column column = Column.values()[convertColumnIndexToModel(shown)];
        String text = column == Column.MARK ? Words.of("shelf.mark") : column == Column.DATE ? row.get().folder().toString()
                : (words.first(row.get(), column) + " " + words.second(row.get(), column)).strip();
        return text.isEmpty() ? null : Words.tip(text);
    }
}

package fairpull.ui.page.pulls;

import fairpull.app.usecase.pulls.PullsView;
import fairpull.domain.pull.PullId;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableRowSorter;

/** Every pull in a row, sorted by whichever column; what is chosen in it is chosen everywhere. */
final class PullTable extends JTable {
    private static final int HEAD = 62;

    private final transient Chosen chosen;
    private transient Rows rows = new Rows(List.of(), List.of());
    private boolean showing;

    /** A column: its head, what stands in it, and whether that is a figure. */
    private record Column(String head, Function<PullsView.Row, ?> cell, boolean figure, int width) {
    }

    PullTable(Chosen chosen) {
        this.chosen = chosen;
        setName("pulls.list");
        getAccessibleContext().setAccessibleName(Words.of("pulls.list"));
        setToolTipText(Words.tip(Words.of("pulls.list.tip")));
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setFillsViewportHeight(true);
        getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting()) {
                chosen.choose(selected());
            }
        });
        chosen.listen(this::mark);
        getTableHeader().setPreferredSize(new Dimension(100, (int) (HEAD * Look.scale())));
        if (getTableHeader().getDefaultRenderer() instanceof JLabel label) {
            label.setVerticalAlignment(SwingConstants.TOP); // a head that wraps must not push its last line out
            getTableHeader().setDefaultRenderer((table, value, isSelected, hasFocus, row, column) -> {
                label.putClientProperty("html.disable", Boolean.FALSE); // a new look takes it back
                return ((TableCellRenderer) label).getTableCellRendererComponent(table, lines(String.valueOf(value)), isSelected, hasFocus,
                        row, column);
            });
        }
    }

    /** A head in as many lines as it needs, whatever stands in it shown as it is. */
    private static String lines(String head) {
        return Words.tip(head);
    }

    private static final class Rows extends AbstractTableModel {
        private final transient List<PullsView.Row> rows;
        private final transient List<Column> columns;

        Rows(List<PullsView.Row> rows, List<Column> columns) {
            this.rows = rows;
            this.columns = columns;
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return columns.get(column).head();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return columns.get(column).cell().apply(rows.get(row));
        }
    }

    /** Shows the pulls of a test. */
    void show(PullsView view) {
        showing = true;
        List<Column> columns = columns(view);
        rows = new Rows(view.rows(), columns);
        setModel(rows);
        TableRowSorter<Rows> sorter = new TableRowSorter<>(rows);
        for (int column = 0; column < columns.size(); column++) {
            sorter.setComparator(column, comparator(view, column));
            DefaultTableCellRenderer cell = new Cell();
            cell.setHorizontalAlignment(columns.get(column).figure() ? SwingConstants.RIGHT : SwingConstants.LEFT);
            getColumnModel().getColumn(column).setCellRenderer(cell);
            getColumnModel().getColumn(column).setPreferredWidth(columns.get(column).width());
        }
        setRowSorter(sorter);
        showing = false;
        mark();
    }

    private static List<Column> columns(PullsView view) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(Words.of("pulls.column.pull"), PullsView.Row::pull, false, 56));
        columns.add(new Column(Words.of("pulls.column.time"), PullsView.Row::time, true, 70));
        columns.add(new Column(Words.of("pulls.column.fate"), row -> row.fateWords()
                + (row.reason().isBlank() ? "" : ": " + row.reason()), false, 170));
        for (int measure = 0; measure < view.measures().size(); measure++) {
            int place = measure;
            columns.add(new Column(LocalNumbers.shown(view.measures().get(measure)), row -> row.values().get(place), true, 110));
        }
        if (view.corrected()) {
            columns.add(new Column(Words.of("pulls.column.factor"), PullsView.Row::factor, true, 70));
        }
        if (!view.temperature().isEmpty()) {
            columns.add(new Column(view.temperature(), PullsView.Row::start, true, 90));
        }
        columns.add(new Column(Words.of("pulls.column.checks"), row -> row.checks().size(), true, 56));
        return columns;
    }

    /** Pulls stand in the order of the plan, figures by their value, words by their letters. */
    private static Comparator<Object> comparator(PullsView view, int column) {
        List<PullId> order = view.rows().stream().map(PullsView.Row::pull).toList();
        return (one, other) -> column == 0 ? Integer.compare(order.indexOf(one), order.indexOf(other))
                : one instanceof PullsView.Figure figure ? figure.compareTo((PullsView.Figure) other)
                : one instanceof Integer count ? count.compareTo((Integer) other)
                : String.valueOf(one).compareToIgnoreCase(String.valueOf(other));
    }

    private static final class Cell extends DefaultTableCellRenderer {
        @Override
        protected void setValue(Object value) {
            setText(LocalNumbers.shown(value instanceof Integer count && count == 0 ? "" : String.valueOf(value)));
        }
    }

    /** A cell that is cut short says all of it; what the table is for stands in the tips of the others. */
    @Override
    public String getToolTipText(MouseEvent at) {
        int row = rowAtPoint(at.getPoint());
        int column = columnAtPoint(at.getPoint());
        if (row < 0 || column < 0) {
            return super.getToolTipText(at);
        }
        Component cell = prepareRenderer(getCellRenderer(row, column), row, column);
        boolean isCut = cell.getPreferredSize().width > getCellRect(row, column, false).width;
        return isCut && cell instanceof JLabel label ? Words.tip(label.getText()) : super.getToolTipText(at);
    }

    private Set<PullId> selected() {
        Set<PullId> pulls = new HashSet<>();
        for (int row : getSelectedRows()) {
            pulls.add(rows.rows.get(convertRowIndexToModel(row)).pull());
        }
        return pulls;
    }

    /** {@return the rows that are chosen, in the order of the plan} */
    List<PullsView.Row> chosenRows() {
        return rows.rows.stream().filter(row -> chosen.pulls().contains(row.pull())).toList();
    }

    private void mark() {
        if (selected().equals(chosen.pulls())) {
            return;
        }
        showing = true;
        clearSelection();
        for (int row = 0; row < rows.rows.size(); row++) {
            if (chosen.pulls().contains(rows.rows.get(row).pull())) {
                int shown = convertRowIndexToView(row);
                addRowSelectionInterval(shown, shown);
            }
        }
        showing = false;
        if (getSelectedRow() >= 0) {
            scrollRectToVisible(getCellRect(getSelectedRow(), 0, true));
        }
    }
}

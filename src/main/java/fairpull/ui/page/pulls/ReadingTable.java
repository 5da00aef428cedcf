package fairpull.ui.page.pulls;

import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Words;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.DefaultTableModel;

/** A table of words to read, of which one row is chosen; a cell too long for its place is told in full by its tip. */
final class ReadingTable extends JTable {
    private transient IntConsumer chosen = row -> { };
    private boolean showing;

    /** A table whose name is also the key of its words. */
    ReadingTable(String name) {
        setName(name);
        getAccessibleContext().setAccessibleName(Words.of(name));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getSelectionModel().addListSelectionListener(event -> {
            if (!showing && !event.getValueIsAdjusting() && getSelectedRow() >= 0) {
                chosen.accept(getSelectedRow());
            }
        });
    }

    /** Hears which row is chosen. */
    void onChosen(IntConsumer listener) {
        chosen = listener;
    }

    /** Shows other rows; nothing is chosen then. */
    void show(List<String> heads, List<List<String>> rows, int... widths) {
        showing = true;
        setModel(new DefaultTableModel(rows.stream().map(row -> row.toArray(Object[]::new)).toArray(Object[][]::new), heads.toArray()) {
            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        });
        for (int column = 0; column < widths.length; column++) {
            getColumnModel().getColumn(column).setPreferredWidth(widths[column]);
        }
        showing = false;
    }

    /** Chooses a row without telling of it. */
    void choose(int row) {
        showing = true;
        if (row < getRowCount()) {
            setRowSelectionInterval(row, row);
        }
        showing = false;
    }

    int chosen() {
        return getSelectedRow();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        return row < 0 || column < 0 ? null : Words.tip(LocalNumbers.shown(String.valueOf(getValueAt(row, column))));
    }
}

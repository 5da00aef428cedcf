package fairpull.ui.page.shelf;

import fairpull.report.chart.Role;
import fairpull.ui.page.shelf.TestRows.Column;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.Look;
import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import net.miginfocom.swing.MigLayout;

/** A cell with a line and a lesser one beneath. Words of strangers are shown as they are, never as markup. */
final class TwoLines extends JPanel implements TableCellRenderer {
    private final transient RowWords words;
    private final JLabel first = new JLabel();
    private final JLabel second = new JLabel();

    TwoLines(RowWords words) {
        super(new MigLayout("insets 0 8 0 8, gap 0 1, fill, wrap 1, hidemode 3", "[grow, fill]", "push[][]push"));
        this.words = words;
        add(first, "wmin 0");
        add(second, "wmin 0");
    }

    @Override
    public Component getTableCellRendererComponent(JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        Column place = Column.values()[table.convertColumnIndexToModel(column)];
        Row shown = (Row) value;
        setBackground(selected ? table.getSelectionBackground() : table.getBackground());
        dress(first, words.first(shown, place), place == Column.TEST || place == Column.CHANGE ? Look.Type.STRONG : Look.Type.BODY,
                Role.INK, selected, table);
        dress(second, words.second(shown, place), Look.Type.SMALL, RowWords.isWrong(shown, place) ? Role.B : Role.SOFT, selected, table);
        second.setVisible(!second.getText().isEmpty());
        getAccessibleContext().setAccessibleName(first.getText() + (second.getText().isEmpty() ? "" : ". " + second.getText()));
        return this;
    }

    private static void dress(JLabel label, String text, Look.Type type, Role role, boolean selected, JTable table) {
        label.setText(text);
        label.setFont(Look.font(type));
        label.setForeground(selected ? table.getSelectionForeground() : Look.colour(role));
    }
}

package fairpull.ui.page.shelf;

import fairpull.app.usecase.shelf.ListedTest;
import fairpull.app.usecase.shelf.ListedTest.Outcome;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;

/** A cell with the interval as a line: zero, the worthwhile gain to either side, the change. */
final class MarkCell extends JPanel implements TableCellRenderer {
    private transient Optional<Drawing> mark = Optional.empty();

    @Override
    public Component getTableCellRendererComponent(JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        mark = ((Row) value).test().flatMap(ListedTest::outcome).flatMap(Outcome::mark);
        // a chart needs its own ground to be read
        setBackground(selected && mark.isEmpty() ? table.getSelectionBackground() : table.getBackground());
        getAccessibleContext().setAccessibleName(mark.map(drawing -> LocalNumbers.shown(drawing.description())).orElse(""));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        mark.ifPresent(drawing -> {
            Graphics2D g = (Graphics2D) graphics.create();
            double scale = Math.min(getWidth() / drawing.width(), getHeight() / drawing.height());
            g.translate((getWidth() - scale * drawing.width()) / 2, (getHeight() - scale * drawing.height()) / 2);
            g.scale(scale, scale);
            DrawingPainter.paint(drawing, g, Look.mode().palette(), Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG));
            g.dispose();
        });
    }
}

package fairpull.ui.form;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JPanel;

/**
 * A chart of a fixed shape, as large as the width it is given allows, and never larger than it was drawn
 * for the size of type.
 */
public final class ScaledChart extends JPanel {
    private final transient Drawing drawing;

    /** A chart. */
    public ScaledChart(Drawing drawing) {
        this.drawing = drawing.reworded(LocalNumbers::shown);
        ChartMenu.attach(this, () -> Optional.of(this.drawing));
        setOpaque(false);
        getAccessibleContext().setAccessibleName(drawing.title());
        getAccessibleContext().setAccessibleDescription(drawing.description());
    }

    private double scale(double width) {
        return width > 0 ? Math.min(Look.scale(), width / drawing.width()) : Look.scale();
    }

    @Override
    public Dimension getPreferredSize() {
        double scale = scale(getWidth());
        return new Dimension((int) Math.ceil(drawing.width() * scale), (int) Math.ceil(drawing.height() * scale));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth();
        super.setBounds(x, y, width, height);
        if (resized) {
            revalidate();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        double scale = scale(getWidth());
        g.scale(scale, scale);
        DrawingPainter.paint(drawing, g, Look.mode().palette(), Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG));
        g.dispose();
    }
}

package fairpull.ui.form;

import fairpull.report.chart.Chart;
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
 * A chart in the width that it is given: drawn as wide as a report for the size of type at most, and made smaller with its type only where
 * no chart would stay legible otherwise.
 */
public final class ScaledChart extends JPanel {
    private final transient Chart chart;
    /** The chart in the width that there was last. */
    private transient Drawing drawing;

    /** A chart of a fixed shape. */
    public ScaledChart(Drawing drawing) {
        this(Chart.fixed(drawing));
    }

    /** A chart in any width. */
    public ScaledChart(Chart chart) {
        this.chart = chart;
        this.drawing = drawn(Drawing.WIDTH);
        ChartMenu.attach(this, () -> Optional.of(drawn(Drawing.WIDTH)));
        setOpaque(false);
        getAccessibleContext().setAccessibleName(drawing.title());
        getAccessibleContext().setAccessibleDescription(drawing.description());
    }

    private Drawing drawn(double width) {
        return chart.wide(Math.max(Chart.NARROWEST, Math.min(Drawing.WIDTH, width))).reworded(LocalNumbers::shown);
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
            drawing = drawn(width / Look.scale());
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

package fairpull.ui.form;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.report.chart.Point;
import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import javax.swing.JPanel;

/** A chart that is drawn as wide and high as its place, with spots that can be clicked. */
public final class ChartView extends JPanel {
    private static final double NEAR = 12;

    private final transient BiFunction<Double, Double, Optional<Shown>> drawer;
    private transient Optional<Shown> shown = Optional.empty();
    private transient IntConsumer clicked = spot -> { };

    /**
     * A drawing and the places on it that can be clicked.
     *
     * @param drawing what is painted
     * @param spots in the order in which they are counted
     */
    public record Shown(Drawing drawing, List<Point> spots) {
    }

    /** A chart made anew for every size; empty where there is nothing to show. Its name is also the key of its words. */
    public ChartView(String name, int height, BiFunction<Double, Double, Optional<Shown>> drawer) {
        this.drawer = drawer;
        setName(name);
        getAccessibleContext().setAccessibleName(Words.of(name));
        setOpaque(false);
        setPreferredSize(new Dimension(500, height));
        setMinimumSize(new Dimension(200, height));
        ChartMenu.attach(this, this::drawing);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                nearest(event).ifPresent(spot -> clicked.accept(spot));
            }
        });
    }

    /** Hears which spot was clicked, counted from 0. */
    public void onClick(IntConsumer listener) {
        clicked = listener;
    }

    private Optional<Integer> nearest(MouseEvent event) {
        List<Point> spots = shown.map(Shown::spots).orElse(List.of());
        int best = -1;
        double least = NEAR;
        for (int place = 0; place < spots.size(); place++) {
            double distance = Math.hypot(spots.get(place).x() - event.getX(), spots.get(place).y() - event.getY());
            if (distance < least) {
                least = distance;
                best = place;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(best);
    }

    /** Draws it anew. */
    public void refresh() {
        shown = getWidth() > 0 ? drawer.apply((double) getWidth(), (double) getHeight())
                .map(chart -> new Shown(chart.drawing().reworded(LocalNumbers::shown), chart.spots())) : Optional.empty();
        getAccessibleContext().setAccessibleName(shown.map(chart -> chart.drawing().title()).orElse(Words.of(getName())));
        getAccessibleContext().setAccessibleDescription(shown.map(chart -> chart.drawing().description()).orElse(""));
        repaint();
    }

    /** {@return what is shown} */
    public Optional<Drawing> drawing() {
        return shown.map(Shown::drawing);
    }

    /** {@return the spots of what is shown} */
    public List<Point> spots() {
        return shown.map(Shown::spots).orElse(List.of());
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (resized) {
            refresh();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (shown.isEmpty()) {
            ((Graphics2D) graphics).setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setFont(Look.font(Look.Type.SMALL));
            graphics.setColor(Look.colour(Role.SOFT));
            String nothing = Words.of("chart.nothing");
            graphics.drawString(nothing, Math.max(0, (getWidth() - graphics.getFontMetrics().stringWidth(nothing)) / 2), getHeight() / 2);
        }
        shown.ifPresent(chart -> DrawingPainter.paint(chart.drawing(), (Graphics2D) graphics, Look.mode().palette(),
                Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG)));
    }
}

package fairpull.ui.form;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.report.chart.Point;
import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Graphics;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import javax.swing.JPanel;

/**
 * A chart that is drawn as wide and high as its place, with spots that can be clicked. With the keys, arrows go from spot to spot, Home
 * and End to the outer ones, and Enter or the space bar takes one.
 */
public final class ChartView extends JPanel {
    private static final double NEAR = 12;
    private static final double RADIUS = 9;

    private final int height;
    private final transient BiFunction<Double, Double, Optional<Shown>> drawer;
    private transient Optional<Shown> shown = Optional.empty();
    private transient IntConsumer clicked = spot -> { };
    /** The spot that the keys have come to; below 0 where they have come to none. */
    private int reached = -1;

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
        this.height = height;
        ChartMenu.attach(this, this::drawing);
        Keys.focusable(this);
        Keys.bind(this, "LEFT", () -> reach(reached < 0 ? spots().size() - 1 : reached - 1));
        Keys.bind(this, "RIGHT", () -> reach(reached + 1));
        Keys.bind(this, "HOME", () -> reach(0));
        Keys.bind(this, "END", () -> reach(spots().size() - 1));
        Keys.bind(this, "ENTER", this::takeReached);
        Keys.bind(this, "SPACE", this::takeReached);
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

    private void reach(int spot) {
        int last = spots().size() - 1;
        reached = last < 0 ? -1 : Math.max(0, Math.min(last, spot));
        describe();
        repaint();
    }

    private void takeReached() {
        if (reached >= 0 && reached < spots().size()) {
            clicked.accept(reached);
        }
    }

    private void describe() {
        String drawn = shown.map(chart -> chart.drawing().description()).orElse("");
        boolean at = reached >= 0 && reached < spots().size();
        getAccessibleContext().setAccessibleDescription(at ? Words.of("chart.spot", reached + 1, spots().size()) + " " + drawn : drawn);
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

    /** The chart is as high as the size of type asks for. */
    @Override
    public Dimension getPreferredSize() {
        return new Dimension(500, (int) Math.ceil(height * Look.scale()));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(200, getPreferredSize().height);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (drawer != null) {
            refresh();
        }
    }

    /** Draws it anew. */
    public void refresh() {
        double scale = Look.scale();
        shown = getWidth() > 0 ? drawer.apply(getWidth() / scale, getHeight() / scale)
                .map(chart -> new Shown(chart.drawing().reworded(LocalNumbers::shown), scaled(chart.spots(), scale))) : Optional.empty();
        getAccessibleContext().setAccessibleName(shown.map(chart -> chart.drawing().title()).orElse(Words.of(getName())));
        describe();
        repaint();
    }

    private static List<Point> scaled(List<Point> spots, double scale) {
        return spots.stream().map(spot -> new Point(spot.x() * scale, spot.y() * scale)).toList();
    }

    /** {@return what is shown} */
    public Optional<Drawing> drawing() {
        return shown.map(Shown::drawing);
    }

    /** {@return the spots of what is shown, as the component counts} */
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
        shown.ifPresent(chart -> paint(chart.drawing(), (Graphics2D) graphics.create()));
        if (isFocusOwner()) {
            focus((Graphics2D) graphics.create());
        }
    }

    private static void paint(Drawing drawing, Graphics2D g) {
        g.scale(Look.scale(), Look.scale());
        DrawingPainter.paint(drawing, g, Look.mode().palette(), Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG));
        g.dispose();
    }

    private void focus(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Look.colour(Role.A));
        g.draw(new RoundRectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1, RADIUS, RADIUS));
        if (reached >= 0 && reached < spots().size()) {
            Point spot = spots().get(reached);
            g.setStroke(new BasicStroke(2));
            g.draw(new Ellipse2D.Double(spot.x() - RADIUS, spot.y() - RADIUS, 2 * RADIUS, 2 * RADIUS));
        }
        g.dispose();
    }
}

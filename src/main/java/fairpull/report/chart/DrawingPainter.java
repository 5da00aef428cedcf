package fairpull.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Paints a drawing on a screen or a page, in the colours of a palette. The counterpart of {@link SvgWriter}. */
public final class DrawingPainter implements Shape.Cases<Void> {
    private static final float[] BROKEN = {5, 3};
    private static final float[] DOTTED = {2, 3};
    private static final int HATCH_ALPHA = 89;

    private final Graphics2D g;
    private final Palette palette;
    private final Font plain;
    private final Font bold;

    private DrawingPainter(Graphics2D g, Palette palette, Font plain, Font bold) {
        this.g = g;
        this.palette = palette;
        this.plain = plain;
        this.bold = bold;
    }

    /**
     * Paints a drawing; one of its units is one unit of the graphics.
     *
     * @param drawing what is painted
     * @param graphics where; left as it was
     * @param palette the colours of the roles
     * @param plain the typeface of small text, at any size
     * @param bold the typeface of strong text, at any size
     */
    public static void paint(Drawing drawing, Graphics2D graphics, Palette palette, Font plain, Font bold) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        DrawingPainter painter = new DrawingPainter(g, palette, plain, bold);
        drawing.shapes().forEach(shape -> shape.match(painter));
        g.dispose();
    }

    private Color colour(Role role) {
        return Color.decode(palette.colour(role));
    }

    private void stroke(Role role, double width, Shape.Dash dash) {
        g.setColor(colour(role));
        g.setStroke(switch (dash) {
            case SOLID -> new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
            case BROKEN -> dashed(width, BROKEN);
            case DOTTED -> dashed(width, DOTTED);
        });
    }

    private static BasicStroke dashed(double width, float[] pattern) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
    }

    @Override
    public Void line(Shape.Line line) {
        stroke(line.role(), line.width(), line.dash());
        g.draw(new Line2D.Double(line.from().x(), line.from().y(), line.to().x(), line.to().y()));
        return null;
    }

    @Override
    public Void area(Shape.Area area) {
        g.setColor(colour(area.role()));
        g.fill(rectangle(area.bounds(), area.radius()));
        return null;
    }

    @Override
    public Void frame(Shape.Frame frame) {
        stroke(frame.role(), frame.width(), Shape.Dash.SOLID);
        g.draw(rectangle(frame.bounds(), frame.radius()));
        return null;
    }

    private static RoundRectangle2D rectangle(Bounds bounds, double radius) {
        return new RoundRectangle2D.Double(bounds.x(), bounds.y(), bounds.width(), bounds.height(), 2 * radius, 2 * radius);
    }

    @Override
    public Void hatch(Shape.Hatch hatch) {
        Color full = colour(hatch.role());
        g.setColor(new Color(full.getRed(), full.getGreen(), full.getBlue(), HATCH_ALPHA));
        g.setStroke(new BasicStroke(1));
        HatchLines.of(hatch).forEach(line -> g.draw(new Line2D.Double(line.from().x(), line.from().y(), line.to().x(), line.to().y())));
        return null;
    }

    @Override
    public Void disc(Shape.Disc disc) {
        g.setColor(colour(disc.role()));
        g.fill(circle(disc.centre(), disc.radius()));
        return null;
    }

    @Override
    public Void ring(Shape.Ring ring) {
        g.setColor(colour(Role.CARD));
        g.fill(circle(ring.centre(), ring.radius()));
        stroke(ring.role(), ring.width(), Shape.Dash.SOLID);
        g.draw(circle(ring.centre(), ring.radius()));
        return null;
    }

    private static Ellipse2D circle(Point centre, double radius) {
        return new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
    }

    @Override
    public Void polygon(Shape.Polygon polygon) {
        Path2D outline = through(polygon.corners());
        outline.closePath();
        g.setColor(colour(polygon.role()));
        g.fill(outline);
        return null;
    }

    @Override
    public Void path(Shape.Path path) {
        stroke(path.role(), path.width(), path.dash());
        g.draw(through(path.points()));
        return null;
    }

    private static Path2D through(List<Point> points) {
        Path2D path = new Path2D.Double();
        boolean first = true;
        for (Point point : points) {
            if (first) {
                path.moveTo(point.x(), point.y());
            } else {
                path.lineTo(point.x(), point.y());
            }
            first = false;
        }
        return path;
    }

    @Override
    public Void words(Shape.Words words) {
        g.setFont((words.type().bold() ? bold : plain).deriveFont((float) words.type().size()));
        g.setColor(colour(words.role()));
        double width = g.getFontMetrics().getStringBounds(words.text(), g).getWidth();
        double left = switch (words.anchor()) {
            case START -> words.at().x();
            case MIDDLE -> words.at().x() - width / 2;
            case END -> words.at().x() - width;
        };
        g.drawString(words.text(), (float) left, (float) words.at().y());
        return null;
    }
}

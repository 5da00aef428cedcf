package fairpull.ui.page.tracing;

import fairpull.app.document.OpenedPicture;
import fairpull.app.task.Latest;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.Tracing;
import fairpull.report.chart.Role;
import fairpull.ui.form.FaultWords;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** The picture with what was set in it, at any scale. */
final class PictureView extends JPanel {
    private static final double NEAR = 7;
    private static final double SMALLEST = 0.05;
    private static final double LARGEST = 32;
    private static final double STEP = 1.25;

    private final transient Bench bench;
    private final transient Latest<BufferedImage> painting = new Latest<>(SwingUtilities::invokeLater);
    private transient Optional<OpenedPicture> shown = Optional.empty();
    private transient BufferedImage image;
    private double scale = 1;
    private double left;
    private double top;
    private boolean fitted = true;
    private transient Optional<Point> pointer = Optional.empty();

    PictureView(Bench bench) {
        this.bench = bench;
        setName("tracing.picture");
        setFocusable(true);
        setOpaque(true);
        setPreferredSize(new Dimension(700, 480));
        setMinimumSize(new Dimension(240, 200));
        setToolTipText(Words.tip(Words.of("tracing.picture.tip")));
        getAccessibleContext().setAccessibleName(Words.of("tracing.picture"));
        setCursor(Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR));
        new PictureHand(this, bench).attach();
        bench.listen(this::refresh);
    }

    private void refresh() {
        Optional<OpenedPicture> now = bench.document().opened();
        if (!now.equals(shown)) {
            shown = now;
            image = null;
            now.ifPresent(opened -> painting.ask(progress -> image(opened.picture()), ended -> ended.tell(this::show,
                    fault -> bench.say(List.of(FaultWords.of(fault))))));
        }
        getAccessibleContext().setAccessibleDescription(bench.document().tracing().map(tracing -> Words.of("tracing.picture.state",
                tracing.file().name(), tracing.a().points().size(), tracing.b().points().size())).orElse(Words.of("tracing.nothing")));
        repaint();
    }

    private void show(BufferedImage made) {
        image = made;
        fit();
    }

    /** Millions of pixels: made beside the window's thread. */
    private static BufferedImage image(Picture picture) {
        BufferedImage made = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        int[] row = new int[picture.width()];
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < row.length; x++) {
                row[x] = picture.rgb(x, y);
            }
            made.setRGB(0, y, row.length, 1, row, 0, row.length);
        }
        return made;
    }

    /** Shows all of the picture. */
    void fit() {
        fitted = true;
        if (image != null && getWidth() > 0 && getHeight() > 0) {
            scale = Math.max(SMALLEST, Math.min(LARGEST, Math.min((double) getWidth() / image.getWidth(),
                    (double) getHeight() / image.getHeight())));
            left = (getWidth() - scale * image.getWidth()) / 2;
            top = (getHeight() - scale * image.getHeight()) / 2;
        }
        repaint();
    }

    /** Larger or smaller by steps, about a place of the view. */
    void zoom(int steps, double x, double y) {
        double next = Math.max(SMALLEST, Math.min(LARGEST, scale * Math.pow(STEP, steps)));
        left = x - (x - left) * next / scale;
        top = y - (y - top) * next / scale;
        scale = next;
        fitted = false;
        repaint();
    }

    void zoom(int steps) {
        Optional<PixelPoint> about = bench.chosen().isPresent()
                ? Optional.of(bench.line().points().get(bench.chosen().getAsInt()).at()) : Optional.empty();
        zoom(steps, about.map(this::x).orElse(getWidth() / 2.0), about.map(this::y).orElse(getHeight() / 2.0));
    }

    /** Moves the picture beneath the view. */
    void pan(double rightwards, double downwards) {
        left += rightwards;
        top += downwards;
        fitted = false;
        repaint();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (resized && fitted) {
            fit();
        }
    }

    /** Hears where the pointer is: points near it can be taken hold of; empty once it has left. */
    void pointer(Optional<Point> at) {
        Stream.of(pointer, at).flatMap(Optional::stream).forEach(place -> repaint(place.x - PointMarks.REACH, place.y - PointMarks.REACH,
                2 * PointMarks.REACH, 2 * PointMarks.REACH));
        pointer = at;
    }

    /** {@return the place in the picture that is shown at a place of the view} */
    PixelPoint at(double x, double y) {
        return new PixelPoint((x - left) / scale, (y - top) / scale);
    }

    /** {@return how far from the left edge of the view a place in the picture is shown} */
    double x(PixelPoint place) {
        return left + scale * place.xPx();
    }

    /** {@return how far from the upper edge} */
    double y(PixelPoint place) {
        return top + scale * place.yPx();
    }

    /** {@return whether a place lies in the picture} */
    boolean holds(PixelPoint place) {
        return image != null && place.xPx() >= 0 && place.yPx() >= 0 && place.xPx() < image.getWidth() && place.yPx() < image.getHeight();
    }

    /** {@return the point of the curve at hand that is shown near a place of the view} */
    OptionalInt near(double x, double y) {
        int best = -1;
        double least = NEAR;
        for (int place = 0; place < bench.line().points().size(); place++) {
            PixelPoint at = bench.line().points().get(place).at();
            double away = Math.hypot(x(at) - x, y(at) - y);
            if (away < least) {
                least = away;
                best = place;
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.colour(Role.PAPER));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(Look.font(Look.Type.SMALL));
        if (image == null) {
            paintNothing(g);
        } else {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, scale >= 2 ? RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR
                    : RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(image, (int) Math.round(left), (int) Math.round(top), (int) Math.round(scale * image.getWidth()),
                    (int) Math.round(scale * image.getHeight()), null);
            bench.document().tracing().ifPresent(tracing -> paintTracing(g, tracing));
        }
        g.setStroke(new BasicStroke(isFocusOwner() ? 2 : 1));
        g.setColor(Look.colour(isFocusOwner() ? Role.A : Role.LINE));
        g.draw(new Rectangle2D.Double(0.5, 0.5, getWidth() - 1, getHeight() - 1));
        g.dispose();
    }

    private void paintNothing(Graphics2D g) {
        g.setColor(Look.colour(Role.SOFT));
        String words = Words.of("tracing.nothing");
        g.drawString(words, Math.max(8, (getWidth() - g.getFontMetrics().stringWidth(words)) / 2), getHeight() / 2);
    }

    private void paintTracing(Graphics2D g, Tracing tracing) {
        paintAxis(g, tracing.x(), "x");
        paintAxis(g, tracing.y(), "y");
        PointMarks marks = new PointMarks(this::x, this::y, pointer);
        Part other = bench.part() == Part.A ? Part.B : Part.A;
        marks.paint(g, tracing.line(other).points(), other, OptionalInt.empty(), false);
        marks.paint(g, tracing.line(bench.part()).points(), bench.part(), bench.chosen(), true);
    }

    private void paintAxis(Graphics2D g, AxisDraft axis, String name) {
        for (int point = 0; point < 2; point++) {
            if (axis.place(point).isPresent()) {
                double x = x(axis.place(point).get());
                double y = y(axis.place(point).get());
                for (boolean halo : new boolean[] {true, false}) {
                    g.setColor(halo ? Color.WHITE : new Color(0x0c6e60));
                    g.setStroke(new BasicStroke(halo ? 4 : 1.6f));
                    g.draw(new Line2D.Double(x - 8, y, x + 8, y));
                    g.draw(new Line2D.Double(x, y - 8, x, y + 8));
                }
                label(g, name + (point + 1), x + 6, y - 6);
            }
        }
    }

    /** Words over a picture of any colour: dark on a light ground of their own. */
    private static void label(Graphics2D g, String words, double x, double y) {
        int width = g.getFontMetrics().stringWidth(words);
        g.setColor(new Color(255, 255, 255, 225));
        g.fill(new Rectangle2D.Double(x - 2, y - 12, width + 4, 15));
        g.setColor(new Color(0x0c6e60));
        g.drawString(words, (float) x, (float) y);
    }
}

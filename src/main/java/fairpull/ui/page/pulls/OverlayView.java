package fairpull.ui.page.pulls;

import fairpull.app.task.Latest;
import fairpull.domain.pull.PullId;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.report.chart.OverlayChart;
import fairpull.report.chart.Palette;
import fairpull.report.chart.Role;
import fairpull.report.chart.Shape;
import fairpull.ui.form.ChartMenu;
import fairpull.ui.form.FaultWords;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Graphics;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/**
 * The overlay of curves with its crosshair. The chart is drawn beside the window's thread, once for every zoom, choice and size; until it
 * is there, the one before stands in its place. What is painted on the window's thread is that picture and the crosshair.
 */
final class OverlayView extends JPanel {
    private static final int HEIGHT = 320;
    private static final int NEAR = 16;
    private static final int MOST_READ = 4;
    /** A drawing with more points than this is kept as a picture, not painted point by point. */
    private static final int MOST_POINTS = 20_000;
    private static final double SHORTEST_RPM = 50;

    private final transient Latest<Picture> drawing = new Latest<>(SwingUtilities::invokeLater);
    private transient Consumer<PullId> clicked = pull -> { };
    private transient Optional<OverlayChart.Content> whole = Optional.empty();
    private transient Optional<Picture> picture = Optional.empty();
    private double lowRpm;
    private double highRpm;
    private double scale = 1;
    private transient OptionalDouble crosshairRpm = OptionalDouble.empty();
    private transient OptionalInt pointerY = OptionalInt.empty();
    private transient Optional<double[]> dragged = Optional.empty();

    /** The chart at a size, and its picture where painting it point by point would take long. */
    private record Picture(OverlayChart chart, Optional<BufferedImage> image, double scale) {
    }

    OverlayView() {
        setName("overlay.chart");
        setOpaque(false);
        setFocusable(true);
        setPreferredSize(new Dimension(500, HEIGHT));
        setMinimumSize(new Dimension(200, HEIGHT));
        setToolTipText(null);
        getAccessibleContext().setAccessibleName(Words.of("overlay.chart"));
        ChartMenu.attach(this, this::drawing);
        new OverlayKeys(this).attach();
    }

    /** Hears which pull was clicked. */
    void onClick(Consumer<PullId> listener) {
        clicked = listener;
    }

    /** Shows other content; the zoom stays where the range of speeds does. */
    void show(Optional<OverlayChart.Content> content) {
        boolean sameRange = whole.isPresent() && content.isPresent() && whole.get().lowRpm() == content.get().lowRpm()
                && whole.get().highRpm() == content.get().highRpm();
        whole = content;
        if (!sameRange) {
            content.ifPresent(shown -> {
                lowRpm = shown.lowRpm();
                highRpm = shown.highRpm();
            });
        }
        draw();
    }

    /** {@return the chart that is shown} */
    Optional<OverlayChart> chart() {
        return picture.map(Picture::chart);
    }

    private Optional<Drawing> drawing() {
        return chart().map(OverlayChart::drawing);
    }

    /** {@return the lowest and highest speed in view, in rpm} */
    double[] range() {
        return new double[] {lowRpm, highRpm};
    }

    /** Shows some speeds, within those that there are. */
    void zoom(double low, double high) {
        whole.ifPresent(content -> {
            double wide = Math.max(SHORTEST_RPM, Math.min(high - low, content.highRpm() - content.lowRpm()));
            double from = Math.max(content.lowRpm(), Math.min(low, content.highRpm() - wide));
            if (from != lowRpm || from + wide != highRpm) {
                lowRpm = from;
                highRpm = from + wide;
                draw();
            }
        });
    }

    /** Shows a part or a multiple of the speeds in view, round one of them. */
    void zoomAround(double rpm, double factor) {
        zoom(rpm - (rpm - lowRpm) * factor, rpm + (highRpm - rpm) * factor);
    }

    /** Shows the whole range again. */
    void reset() {
        whole.ifPresent(content -> zoom(content.lowRpm(), content.highRpm()));
    }

    /** {@return the speed under a place, in rpm} */
    double rpmAt(int x) {
        return chart().map(chart -> chart.rpmAt(x)).orElse((lowRpm + highRpm) / 2);
    }

    /** Moves the crosshair; without a height it reads what is chosen. */
    void crosshair(OptionalDouble rpm, OptionalInt y) {
        crosshairRpm = rpm;
        pointerY = y;
        getAccessibleContext().setAccessibleDescription(readout());
        repaint();
    }

    OptionalDouble crosshair() {
        return crosshairRpm;
    }

    /** A stretch that is being dragged out, in places; empty once it is let go. */
    void drag(Optional<double[]> stretch) {
        dragged = stretch;
        repaint();
    }

    void click() {
        readings().stream().findFirst().ifPresent(reading -> clicked.accept(reading.pull()));
    }

    /** {@return what is read under the crosshair: the nearest curves, or those chosen where it was moved by key} */
    List<OverlayChart.Reading> readings() {
        if (picture.isEmpty() || crosshairRpm.isEmpty()) {
            return List.of();
        }
        List<OverlayChart.Reading> all = picture.get().chart().readings(crosshairRpm.getAsDouble());
        if (pointerY.isPresent()) {
            int y = pointerY.getAsInt();
            return all.stream().filter(reading -> Math.abs(reading.at().y() - y) <= NEAR)
                    .sorted(Comparator.comparingDouble(reading -> Math.abs(reading.at().y() - y))).limit(MOST_READ).toList();
        }
        Set<PullId> chosen = whole.map(OverlayChart.Content::chosen).orElse(Set.of());
        return all.stream().filter(reading -> chosen.isEmpty() || chosen.contains(reading.pull())).limit(MOST_READ).toList();
    }

    /** {@return the same in words} */
    String readout() {
        if (crosshairRpm.isEmpty()) {
            return chart().map(chart -> chart.drawing().description()).orElse("");
        }
        StringBuilder words = new StringBuilder(Words.of("overlay.speed", Math.round(crosshairRpm.getAsDouble())));
        readings().forEach(reading -> words.append("; ").append(reading.words()));
        return LocalNumbers.shown(words.toString());
    }

    private void draw() {
        if (whole.isEmpty() || getWidth() < 100) {
            picture = whole.isEmpty() ? Optional.empty() : picture;
            repaint();
            return;
        }
        OverlayChart.Content all = whole.get();
        OverlayChart.Content content = new OverlayChart.Content(all.lines(), all.grid(), all.residuals(), all.chosen(), lowRpm, highRpm,
                all.label(), all.unit(), all.foot());
        double width = getWidth();
        double height = getHeight();
        double sharp = scale;
        Palette palette = Look.mode().palette();
        Font plain = Look.font(Look.Type.SMALL);
        Font bold = Look.font(Look.Type.STRONG);
        drawing.ask(progress -> {
            OverlayChart chart = OverlayChart.draw(content, width, height);
            Drawing shown = chart.drawing().reworded(LocalNumbers::shown);
            OverlayChart local = new OverlayChart(shown, chart.panel(), chart.across(), chart.up(), chart.lines(), chart.numbers());
            int points = shown.shapes().stream().mapToInt(shape -> shape instanceof Shape.Path path ? path.points().size() : 1).sum();
            return new Picture(local, points <= MOST_POINTS ? Optional.empty() : Optional.of(painted(shown, sharp, palette, plain, bold)),
                    sharp);
        }, ended -> {
            picture = Optional.empty();
            ended.tell(drawn -> picture = Optional.of(drawn), fault -> setToolTipText(Words.tip(FaultWords.of(fault))));
            getAccessibleContext().setAccessibleName(chart().map(chart -> chart.drawing().title()).orElse(Words.of("overlay.chart")));
            getAccessibleContext().setAccessibleDescription(readout());
            repaint();
        });
    }

    private static BufferedImage painted(Drawing shown, double sharp, Palette palette, Font plain, Font bold) {
        BufferedImage image = new BufferedImage((int) Math.ceil(shown.width() * sharp), (int) Math.ceil(shown.height() * sharp),
                BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.scale(sharp, sharp);
        DrawingPainter.paint(shown, g, palette, plain, bold);
        g.dispose();
        return image;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean resized = width != getWidth() || height != getHeight();
        super.setBounds(x, y, width, height);
        if (resized) {
            draw();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (drawing != null) {
            draw();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.setFont(Look.font(Look.Type.SMALL));
        if (picture.isEmpty()) {
            g.setColor(Look.colour(Role.SOFT));
            String nothing = Words.of(whole.isPresent() ? "overlay.drawing" : "chart.nothing");
            g.drawString(nothing, Math.max(0, (getWidth() - g.getFontMetrics().stringWidth(nothing)) / 2), getHeight() / 2);
        }
        picture.ifPresent(shown -> paint(shown, g));
        if (isFocusOwner()) {
            g.setColor(Look.colour(Role.A));
            g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, 8, 8);
        }
        g.dispose();
    }

    private void paint(Picture shown, Graphics2D g) {
        double now = g.getTransform().getScaleX();
        if (shown.image().isPresent()) {
            BufferedImage image = shown.image().get();
            g.drawImage(image, AffineTransform.getScaleInstance(1 / shown.scale(), 1 / shown.scale()), null);
            if (now != shown.scale() && now > 0) {
                scale = now;
                SwingUtilities.invokeLater(this::draw);
            }
        } else {
            DrawingPainter.paint(shown.chart().drawing(), g, Look.mode().palette(), Look.font(Look.Type.SMALL),
                    Look.font(Look.Type.STRONG));
        }
        dragged.ifPresent(stretch -> {
            g.setColor(Look.colour(Role.INK));
            for (double x : stretch) {
                g.draw(new Line2D.Double(x, shown.chart().panel().y(), x, shown.chart().panel().bottom()));
            }
        });
        crosshairRpm.ifPresent(rpm -> paintCrosshair(shown.chart(), rpm, g));
    }

    private void paintCrosshair(OverlayChart chart, double rpm, Graphics2D g) {
        if (rpm < chart.across().from() || rpm > chart.across().to()) {
            return;
        }
        double x = chart.across().at(rpm);
        g.setColor(Look.colour(Role.SOFT));
        g.draw(new Line2D.Double(x, chart.panel().y(), x, chart.panel().bottom()));
        pointerY.ifPresent(y -> g.draw(new Line2D.Double(chart.panel().x(), y, chart.panel().right(), y)));
        g.setColor(Look.colour(Role.INK));
        readings().forEach(reading -> g.fill(new Ellipse2D.Double(reading.at().x() - 3, reading.at().y() - 3, 6, 6)));
        String words = readout();
        int wide = g.getFontMetrics().stringWidth(words);
        int left = (int) Math.max(chart.panel().x(), Math.min(x + 10, chart.panel().right() - wide - 12));
        g.setColor(Look.colour(Role.CARD));
        g.fillRect(left - 4, (int) chart.panel().y() + 2, wide + 8, 18);
        g.setColor(Look.colour(Role.INK));
        g.drawString(words, left, (int) chart.panel().y() + 15);
    }
}

package fairpull.engine.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.TracedPoint;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Charts of known curves, drawn here in many ways and followed automatically from one click a curve: how far the traced curve is from the
 * known one. Between points it is read along straight lines. It prints a table of all cases. What is promised is held to the bar: files
 * that keep their pixels, lines of 1 to 5 pixels, dashes at least twice as long as the line is wide; JPEG of quality 0.9 from 1.5 pixels on,
 * of 0.7 from 2 pixels on where the line is not dashed. Beyond that, in a JPEG or with short dashes, the table says what comes of it; from
 * 1.5 pixels on what was read may fall short of the range, by stopping, but must still be right to {@value #BEYOND} of full scale.
 */
@Tag("slow")
class TracingAccuracyTest {
    /** Of full scale. */
    private static final double BAR = 0.005;
    /** Of the range of x that a curve covers. */
    private static final double SHARE = 0.95;
    private static final double BEYOND = 0.02;
    private static final Color RED = new Color(200, 30, 40);
    private static final Color BLUE = new Color(30, 90, 180);
    private static final Color GREEN = new Color(20, 140, 60);
    private static final Color GRID = new Color(205, 205, 205);
    private static final double JAGGED = -1;
    private static final double SMOOTH = 0;
    private static final Color PAPER = Color.WHITE;
    private static final Color NIGHT = new Color(28, 30, 34);

    private record Style(String name, Color a, Color b, Color ground, Color grid, float... dashes) {
    }

    private record Outcome(double within, double largest, String end) {
    }

    private static final List<Style> STYLES = List.of(
            new Style("red and blue", RED, BLUE, PAPER, GRID),
            new Style("green and black", GREEN, Color.BLACK, PAPER, GRID),
            new Style("orange and cyan, dark", Color.ORANGE, Color.CYAN, NIGHT, new Color(70, 72, 76)),
            new Style("dashed red and blue", RED, BLUE, PAPER, GRID, 8, 5));

    @Test
    void followedCurvesAreWithinHalfAPercentOfFullScaleOnNearlyAllOfTheirRange() {
        List<String> broken = new ArrayList<>();
        System.out.printf("%-22s %-10s %5s %-8s | %12s %12s | %12s %12s%n", "colours", "size", "width", "file", "A within %", "A worst %FS",
                "B within %", "B worst %FS");
        for (Style style : STYLES) {
            for (int[] size : new int[][] {{480, 320}, {800, 500}, {1600, 1000}}) {
                for (double width : new double[] {1, 1.5, 2, 3, 5}) {
                    for (double quality : new double[] {JAGGED, SMOOTH, 0.9, 0.7, 0.5}) {
                        row(style, size, width, quality).ifPresent(broken::add);
                    }
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    private static boolean isPromised(Style style, double width, double quality) {
        boolean dashed = style.dashes().length > 0;
        if (dashed && style.dashes()[0] < 2 * width) {
            return false;
        }
        return quality <= SMOOTH || quality == 0.9 && width >= 1.5 || quality == 0.7 && width >= 2 && !dashed;
    }

    private static Optional<String> row(Style style, int[] size, double width, double quality) {
        DoubleUnaryOperator b = rpm -> DrawnChart.power(rpm) * 1.18 - 18;
        DrawnChart chart = new DrawnChart(size[0], size[1], quality >= SMOOTH, style.ground()).grid(style.grid())
                .curve(DrawnChart::power, style.a(), width, style.dashes()).curve(b, style.b(), width, style.dashes())
                .legend(style.a(), style.b(), width);
        Picture picture = quality > 0 ? chart.picture(quality) : chart.picture();
        Outcome first = outcome(chart, picture, DrawnChart::power);
        Outcome second = outcome(chart, picture, b);
        String line = String.format(Locale.ROOT, "%-22s %-10s %5.1f %-8s | %12.1f %12.2f | %12.1f %12.2f", style.name(),
                size[0] + "x" + size[1], width, quality > 0 ? "jpeg " + quality : quality == SMOOTH ? "smooth" : "jagged", 100 * first.within(), 100 * first.largest(),
                100 * second.within(), 100 * second.largest());
        boolean promised = isPromised(style, width, quality);
        boolean good = first.within() >= SHARE && second.within() >= SHARE;
        boolean right = Math.max(first.largest(), second.largest()) <= BEYOND;
        System.out.println(line + (promised ? "" : "   beyond") + (good ? "" : " short: " + first.end() + " / " + second.end()));
        return (promised ? good : width < 1.5 || right) ? Optional.empty() : Optional.of(line);
    }

    private static Outcome outcome(DrawnChart chart, Picture picture, DoubleUnaryOperator power) {
        Optional<FollowedLine> found = Follower.follow(picture, chart.on(power, 5600), Follower.USUAL_GAP_PX);
        if (found.isEmpty()) {
            return new Outcome(0, 1, "no line");
        }
        FollowedLine line = Thinning.of(found.get(), Thinning.USUAL_STEP_PX);
        Calibration calibration = Calibration.of(chart.axes());
        List<TracedPoint> points = line.points().stream().map(point -> calibration.read(point, line.widthPx())).toList();
        double[] errors = Arrays.stream(grid()).map(rpm -> error(points, rpm, power)).toArray();
        double within = Arrays.stream(errors).filter(error -> error <= BAR).count() / (double) errors.length;
        LinePoint start = line.points().get(0);
        return new Outcome(within, Arrays.stream(errors).filter(Double::isFinite).max().orElse(1), line.left().reason() + " at "
                + Math.round(chart.rpm(start.at().xPx())) + ", " + line.right().reason() + " at "
                + Math.round(chart.rpm(line.right().at().xPx())) + ", width " + line.widthPx());
    }

    private static double[] grid() {
        double[] speeds = new double[501];
        for (int place = 0; place < speeds.length; place++) {
            speeds[place] = DrawnChart.FROM + place * (DrawnChart.TO - DrawnChart.FROM) / (speeds.length - 1);
        }
        return speeds;
    }

    private static double error(List<TracedPoint> points, double rpm, DoubleUnaryOperator power) {
        for (int place = 1; place < points.size(); place++) {
            TracedPoint from = points.get(place - 1);
            TracedPoint to = points.get(place);
            if (from.x() <= rpm && rpm <= to.x()) {
                double read = from.y() + (rpm - from.x()) / (to.x() - from.x()) * (to.y() - from.y());
                return Math.abs(read - power.applyAsDouble(rpm)) / DrawnChart.FULL_SCALE;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}

package fairpull.report.chart;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SweptCurve;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Every pull over engine speed, laid over each other: each pull faint, the mean of each install strong with its name at its end, A drawn
 * through and B broken, what is chosen in ink. Of a curve with more rows than the panel has columns only the least and the largest value
 * in each column are drawn, which looks the same.
 *
 * @param drawing the chart
 * @param panel where the curves stand
 * @param across engine speed in rpm over the panel
 * @param up values over the panel
 * @param lines what is drawn of each pull
 * @param numbers how values are printed
 */
public record OverlayChart(Drawing drawing, Bounds panel, Scale across, Scale up, List<OverlayLine> lines, Numbers numbers) {
    private static final double TOP = 24;
    private static final double BOTTOM = 40;
    private static final double RIGHT = 34;
    private static final int MOST_TICKS = 8;
    private static final double NAMES_APART = 13;

    /**
     * The lines of one pull, and how it counts.
     *
     * @param curve the pull
     * @param onGrid the same pull on the grid, by the smoothing of the finding; NaN where it has no value
     */
    public record Line(SweptCurve curve, Samples onGrid) {
    }

    /**
     * What is drawn.
     *
     * @param lines the pulls that are shown
     * @param grid of the smoothed curves; empty where there are none, and then no means
     * @param residuals whether each pull is shown less the mean of its install, or of all; empty for the curves themselves
     * @param chosen the pulls that are marked
     * @param lowRpm the lowest speed shown
     * @param highRpm the highest
     * @param label of the values, with their unit
     * @param unit of the values
     * @param foot small words under the axis
     */
    public record Content(List<Line> lines, Optional<SpeedGrid> grid, Optional<Against> residuals, Set<PullId> chosen, double lowRpm,
            double highRpm, String label, String unit, String foot) {
        public Content {
            lines = List.copyOf(lines);
            chosen = Set.copyOf(chosen);
            Objects.requireNonNull(residuals, "residuals");
        }
    }

    /** The mean that residuals are taken from. */
    public enum Against {
        INSTALL, ALL
    }

    /**
     * What a pull reads at a speed: the values of its nearest row.
     *
     * @param pull which one
     * @param rpm engine speed of that row
     * @param value there, in the unit of the chart
     * @param words the pull and its value with the unit
     * @param at where it stands on the drawing
     */
    public record Reading(PullId pull, double rpm, double value, String words, Point at) {
    }

    public OverlayChart {
        lines = List.copyOf(lines);
    }

    /** {@return the engine speed at a place of the drawing, in rpm} */
    public double rpmAt(double x) {
        return across.from() + (x - across.start()) / (across.end() - across.start()) * (across.to() - across.from());
    }

    /** {@return what the pulls read at an engine speed, in their order} */
    public List<Reading> readings(double rpm) {
        List<Reading> readings = new ArrayList<>();
        for (OverlayLine line : lines) {
            int row = line.nearest(Units.RPM.toSi(rpm));
            if (row >= 0 && Double.isFinite(line.values().at(row))) {
                double value = line.values().at(row);
                double here = Units.RPM.fromSi(line.speedsRadPerS().at(row));
                readings.add(new Reading(line.curve().pull(), here, value, line.curve().pull() + "  " + numbers.with(value),
                        new Point(across.at(here), up.at(value))));
            }
        }
        return readings;
    }

    /** {@return the chart at a size} */
    public static OverlayChart draw(Content content, double width, double height) {
        return new Layout(content, width, height).draw();
    }

    private static final class Layout {
        private final Content content;
        private final double width;
        private final double height;
        private final List<Shape> shapes = new ArrayList<>();
        private final List<OverlayLine> lines;
        private final Map<String, Samples> means = new LinkedHashMap<>();
        private Bounds panel;
        private Scale across;
        private Scale up;

        Layout(Content content, double width, double height) {
            this.content = content;
            this.width = width;
            this.height = height;
            content.grid().ifPresent(grid -> byInstall().forEach((install, of) ->
                    means.put(install, InstallCurve.mean(of.stream().map(Line::onGrid).toList(), grid.size()))));
            this.lines = content.residuals().isPresent() ? residuals()
                    : content.lines().stream().map(line -> OverlayLine.rows(line.curve())).toList();
        }

        private Map<String, List<Line>> byInstall() {
            Map<String, List<Line>> byInstall = new LinkedHashMap<>();
            content.lines().stream().filter(line -> line.curve().used())
                    .forEach(line -> byInstall.computeIfAbsent(line.curve().pull().install(), none -> new ArrayList<>()).add(line));
            return byInstall;
        }

        private List<OverlayLine> residuals() {
            if (content.grid().isEmpty()) {
                return List.of();
            }
            SpeedGrid grid = content.grid().get();
            Samples all = InstallCurve.mean(content.lines().stream().filter(line -> line.curve().used()).map(Line::onGrid).toList(),
                    grid.size());
            return content.lines().stream().map(line -> {
                Samples mean = content.residuals().get() == Against.ALL ? all
                        : means.getOrDefault(line.curve().pull().install(), line.onGrid());
                return OverlayLine.onGrid(line.curve(), grid, Samples.of(IntStream.range(0, grid.size())
                        .mapToDouble(place -> line.onGrid().at(place) - mean.at(place)).toArray()));
            }).toList();
        }

        OverlayChart draw() {
            Scale speeds = new Scale(content.lowRpm(), content.highRpm(), 0, 1);
            double[] range = range();
            double left = Axes.leftMargin(range[0], range[1]);
            panel = new Bounds(left, TOP, width - left - RIGHT, height - TOP - BOTTOM);
            across = new Scale(speeds.from(), speeds.to(), panel.x(), panel.right());
            up = new Scale(range[0], range[1], panel.bottom(), panel.y());
            shapes.addAll(Axes.up(panel, up, content.label(), width));
            shapes.addAll(Axes.along(panel, across, MOST_TICKS, value -> Numbers.THIN + Units.RPM.symbol(), width));
            if (content.residuals().isPresent()) {
                double zero = up.at(0);
                shapes.add(new Shape.Line(new Point(panel.x(), zero), new Point(panel.right(), zero), Role.INK, 1.2, Shape.Dash.SOLID));
            }
            lines.stream().filter(line -> !content.chosen().contains(line.curve().pull())).forEach(this::pull);
            if (content.residuals().isEmpty()) {
                means();
            }
            lines.stream().filter(line -> content.chosen().contains(line.curve().pull())).forEach(this::chosen);
            shapes.add(new Shape.Words(new Point(2, height - 5), LetterWidths.fit(content.foot(), Shape.Type.SMALL, width - 4), Role.SOFT,
                    Shape.Type.SMALL, Shape.Anchor.START));
            return new OverlayChart(new Drawing(width, height, content.label() + " over engine speed", description(), shapes), panel,
                    across, up, lines, Numbers.resolving((up.to() - up.from()) / 100, content.unit()));
        }

        private String description() {
            long excluded = content.lines().stream().filter(line -> !line.curve().used()).count();
            return content.lines().size() + " pulls of " + String.join(", ", byInstall().keySet()) + (excluded == 0 ? ""
                    : ", " + excluded + " of them left out (dotted)") + ", from " + Numbers.given(Math.round(content.lowRpm())) + " to "
                    + Numbers.given(Math.round(content.highRpm())) + " rpm.";
        }

        private double[] range() {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (OverlayLine line : lines) {
                double[] own = line.range(Units.RPM.toSi(content.lowRpm()), Units.RPM.toSi(content.highRpm()));
                low = Math.min(low, own[0]);
                high = Math.max(high, own[1]);
            }
            if (!(high >= low)) {
                return new double[] {0, 1};
            }
            if (content.residuals().isPresent()) {
                low = Math.min(low, 0);
                high = Math.max(high, 0);
            }
            double margin = Math.max(0.05 * (high - low), 1e-6 * Math.max(1, Math.abs(high)));
            return new double[] {low - margin, high + margin};
        }

        private void pull(OverlayLine line) {
            Part part = line.curve().part();
            boolean plain = means.isEmpty() || content.residuals().isPresent();
            Role role = part == Part.A ? plain ? Role.A : Role.A_FAINT : plain ? Role.B : Role.B_FAINT;
            Shape.Dash dash = !line.curve().used() ? Shape.Dash.DOTTED
                    : plain && part == Part.B && lines.size() <= 60 ? Shape.Dash.BROKEN : Shape.Dash.SOLID;
            path(line, role, 0.9, dash);
        }

        private void chosen(OverlayLine line) {
            path(line, Role.INK, content.chosen().size() > 12 ? 1 : 1.8, line.curve().used() ? Shape.Dash.SOLID : Shape.Dash.DOTTED);
        }

        private void path(OverlayLine line, Role role, double thick, Shape.Dash dash) {
            for (List<Point> stretch : line.points(across, up)) {
                shapes.add(new Shape.Path(stretch, role, thick, dash));
            }
        }

        private void means() {
            if (content.grid().isEmpty()) {
                return;
            }
            List<double[]> ends = new ArrayList<>();
            List<String> names = new ArrayList<>(means.keySet());
            for (String install : names) {
                boolean a = install.startsWith("A");
                double end = Double.NaN;
                for (List<Point> stretch : OverlayLine.points(content.grid().get(), means.get(install), across, up)) {
                    shapes.add(new Shape.Path(stretch, a ? Role.A : Role.B, a ? 1.3 : 2.2, a ? Shape.Dash.SOLID : Shape.Dash.BROKEN));
                    end = stretch.get(stretch.size() - 1).y();
                }
                ends.add(new double[] {end, ends.size()});
            }
            ends.sort((one, other) -> Double.compare(one[0], other[0]));
            double last = Double.NEGATIVE_INFINITY;
            for (double[] end : ends) {
                if (Double.isFinite(end[0])) {
                    last = Math.max(last + NAMES_APART, end[0] + 4);
                    String install = names.get((int) end[1]);
                    shapes.add(new Shape.Words(new Point(panel.right() + 5, last), install, install.startsWith("A") ? Role.A : Role.B,
                            Shape.Type.SMALL, Shape.Anchor.START));
                }
            }
        }
    }
}

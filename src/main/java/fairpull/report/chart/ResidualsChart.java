package fairpull.report.chart;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.report.chart.SpeedPlot.Pen;
import fairpull.report.wording.CurveNumbers;
import fairpull.report.wording.CurveWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What each install leaves over: its pulls less their mean as thin lines (pull scatter), and its mean less the mean of the installs of
 * its part as a strong one (refit scatter and drift). One panel an install, all to the same scale.
 */
public final class ResidualsChart {
    /** More panels than these would be too small to read. */
    public static final int MOST = 24;
    private static final int COLUMNS = 5;
    private static final double TOP = 30;
    private static final double TITLE = 18;
    private static final double PANEL = 84;
    private static final double BETWEEN = 14;
    private static final double RIGHT = 8;
    private static final int MOST_LINES = 3;

    private record Residual(InstallCurve install, List<Samples> pulls, Samples mean) {
    }

    private final CurveFinding curve;
    private final SpeedGrid grid;
    private final String settings;
    private final List<Residual> residuals;
    private final double reach;
    private final List<Shape> shapes = new ArrayList<>();

    private ResidualsChart(CurveFinding curve, String settings) {
        this.curve = curve;
        this.grid = curve.curves().grid();
        this.settings = settings;
        List<InstallCurve> installs = InstallCurve.of(curve.curves());
        Map<Part, Samples> parts = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            parts.put(part, InstallCurve.mean(installs.stream().filter(install -> install.part() == part).map(InstallCurve::mean).toList(),
                    grid.size()));
        }
        this.residuals = installs.stream().limit(MOST).map(install -> new Residual(install,
                install.pulls().stream().map(pull -> less(pull, install.mean())).toList(), less(install.mean(), parts.get(install.part()))))
                .toList();
        double largest = residuals.stream().flatMap(one -> Stream.concat(one.pulls().stream(),
                Stream.of(one.mean()))).flatMapToDouble(Samples::stream).filter(Double::isFinite).map(Math::abs).max()
                .orElse(0);
        this.reach = largest > 0 ? 1.1 * largest : 1;
    }

    private static Samples less(Samples values, Samples mean) {
        return Samples.of(IntStream.range(0, values.size()).mapToDouble(place -> values.at(place) - mean.at(place)).toArray());
    }

    /** {@return the chart; {@code settings} stand at its foot} */
    public static Drawing draw(CurveFinding curve, String settings) {
        return new ResidualsChart(curve, settings).draw();
    }

    private Drawing draw() {
        shapes.add(new Shape.Words(new Point(2, 14), LetterWidths.fit(CurveWords.residualAxis(curve), Shape.Type.SMALL, Drawing.WIDTH - 4),
                Role.SOFT, Shape.Type.SMALL, Shape.Anchor.START));
        double left = Axes.leftMargin(-reach, reach);
        int columns = Math.min(COLUMNS, residuals.size());
        int rows = (residuals.size() + columns - 1) / columns;
        double width = (Drawing.WIDTH - left - RIGHT + BETWEEN) / columns - BETWEEN;
        double bottom = TOP + rows * (TITLE + PANEL) + (rows - 1) * BETWEEN;
        for (int place = 0; place < residuals.size(); place++) {
            Bounds panel = new Bounds(left + place % columns * (width + BETWEEN),
                    TOP + TITLE + place / columns * (TITLE + PANEL + BETWEEN), width, PANEL);
            panel(residuals.get(place), panel, place % columns == 0);
            if (place + columns >= residuals.size()) {
                speeds(panel);
            }
        }
        Foot foot = new Foot(settings, Drawing.WIDTH);
        shapes.addAll(foot.under(bottom));
        return new Drawing(Drawing.WIDTH, bottom + foot.height(), CurveWords.residualTitle(),
                CurveWords.residualDescription(curve), shapes);
    }

    private void panel(Residual residual, Bounds panel, boolean first) {
        Part part = residual.install().part();
        Role role = part == Part.A ? Role.A : Role.B;
        SpeedPlot plot = new SpeedPlot(panel, Drawing.WIDTH, grid.firstRadPerS(), grid.lastRadPerS(), -reach, reach);
        Axes.lines(panel, new Scale(-reach, reach, panel.bottom(), panel.y()), MOST_LINES).stream()
                .filter(shape -> first || !(shape instanceof Shape.Words)).forEach(shapes::add);
        String title = LetterWidths.fit(residual.install().label(), Shape.Type.STRONG, panel.width());
        shapes.add(new Shape.Words(new Point(panel.x(), panel.y() - 6), title, role, Shape.Type.STRONG, Shape.Anchor.START));
        double zero = plot.y(0);
        shapes.add(new Shape.Line(new Point(panel.x(), zero), new Point(panel.right(), zero), Role.INK, 1, Shape.Dash.SOLID));
        Pen faint = new Pen(part == Part.A ? Role.A_FAINT : Role.B_FAINT, 1, Shape.Dash.SOLID);
        residual.pulls().forEach(pull -> shapes.addAll(plot.line(grid.size(), grid::at, pull::at, faint)));
        shapes.addAll(plot.line(grid.size(), grid::at, residual.mean()::at,
                new Pen(role, part == Part.A ? 1.5 : 2.4, part == Part.A ? Shape.Dash.SOLID : Shape.Dash.BROKEN)));
    }

    /** Beneath the last panel of each column: both ends of the grid. */
    private void speeds(Bounds panel) {
        double y = panel.bottom() + 18;
        shapes.add(new Shape.Words(new Point(panel.x(), y), CurveNumbers.bareRpm(grid.firstRadPerS()), Role.SOFT, Shape.Type.SMALL,
                Shape.Anchor.START));
        shapes.add(new Shape.Words(new Point(panel.right(), y), CurveNumbers.rpm(grid.lastRadPerS()), Role.SOFT, Shape.Type.SMALL,
                Shape.Anchor.END));
    }
}

package fairpull.report.chart;

import fairpull.domain.curve.CurveTable;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.report.chart.SpeedPlot.Pen;
import fairpull.report.wording.CurveWords;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The curves of A and B over engine speed: every pull faint, the mean of each install thin, the mean of each part strong. */
public final class CurvesChart {
    private static final double HEIGHT = 320;
    private static final double TOP = 30;
    private static final double RIGHT = 26;

    private final CurveFinding curve;
    private final CurveTable table;
    private final List<InstallCurve> installs;
    private final String settings;
    private final double width;
    private final SpeedPlot plot;
    private final List<Shape> shapes = new ArrayList<>();

    private CurvesChart(CurveFinding curve, String settings, double width) {
        this.curve = curve;
        this.table = curve.curves();
        this.settings = settings;
        this.width = width;
        this.installs = InstallCurve.of(table);
        DoubleSummaryStatistics values = table.rows().stream().flatMapToDouble(row -> row.values().stream()).filter(Double::isFinite)
                .summaryStatistics();
        double margin = Math.max(0.04 * (values.getMax() - values.getMin()), 1e-9 * Math.max(1, Math.abs(values.getMax())));
        double low = values.getMin() - margin;
        double high = values.getMax() + margin;
        double left = Axes.leftMargin(low, high);
        this.plot = new SpeedPlot(new Bounds(left, TOP, width - left - RIGHT, HEIGHT - TOP), width, table.grid().firstRadPerS(),
                table.grid().lastRadPerS(), low, high);
    }

    /** {@return the chart; {@code settings} stand at its foot} */
    public static Chart of(CurveFinding curve, String settings) {
        return width -> new CurvesChart(curve, settings, width).draw();
    }

    private Drawing draw() {
        shapes.addAll(plot.frame(CurveWords.axis(curve)));
        shapes.addAll(plot.speeds(plot.panel()));
        installs.forEach(install -> install.pulls().forEach(pull -> over(pull, faint(install.part()))));
        installs.forEach(install -> over(install.mean(), new Pen(role(install.part()), 0.7, Shape.Dash.SOLID)));
        part(CurvePoint::meanA, new Pen(Role.A, 1.5, Shape.Dash.SOLID));
        part(CurvePoint::meanB, new Pen(Role.B, 2.8, Shape.Dash.BROKEN));
        CurvePoint last = curve.points().get(curve.points().size() - 1);
        shapes.addAll(plot.letters(plot.at(last.speedRadPerS(), last.meanA()), plot.at(last.speedRadPerS(), last.meanB())));
        Foot foot = new Foot(settings, width);
        shapes.addAll(foot.under(HEIGHT));
        return new Drawing(width, HEIGHT + foot.height(), CurveWords.curvesTitle(curve),
                CurveWords.curvesDescription(curve), shapes);
    }

    private static Pen faint(Part part) {
        return new Pen(part == Part.A ? Role.A_FAINT : Role.B_FAINT, 0.8, Shape.Dash.SOLID);
    }

    private static Role role(Part part) {
        return part == Part.A ? Role.A : Role.B;
    }

    private void over(Samples values, Pen pen) {
        shapes.addAll(plot.line(values.size(), table.grid()::at, values::at, pen));
    }

    private void part(ToDoubleFunction<CurvePoint> mean, Pen pen) {
        for (List<CurvePoint> stretch : Stretches.of(curve)) {
            shapes.addAll(plot.line(stretch.size(), place -> stretch.get(place).speedRadPerS(),
                    place -> mean.applyAsDouble(stretch.get(place)), pen));
        }
    }
}

package fairpull.engine.judging;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFigure.Kind;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Peak, mean and area of every curve, over the speeds that all pulls cover, judged by the model of a single measure. */
final class CurveFigures {
    private final CurveTable table;
    private final int[] common;

    private CurveFigures(CurveTable table) {
        this.table = table;
        common = IntStream.range(0, table.grid().size())
                .filter(place -> table.rows().stream().allMatch(row -> Double.isFinite(row.values().at(place)))).toArray();
    }

    /** The figures that can be judged. */
    static List<CurveFigure> of(CurveTable table, CurveFit fit, JudgeSettings settings) {
        CurveFigures figures = new CurveFigures(table);
        List<CurveFigure> all = new ArrayList<>();
        if (figures.width() > 0) {
            String unit = table.unit().symbol();
            figures.add(all, fit, settings, Kind.PEAK, figures.peakSpeeds(), unit, figures::peak);
            figures.add(all, fit, settings, Kind.MEAN, figures.speeds(), unit, row -> figures.area(row) / figures.width());
            figures.add(all, fit, settings, Kind.AREA, figures.speeds(), unit + "·" + Units.RPM.symbol(),
                    row -> Units.RPM.differenceFromSi(figures.area(row)));
        }
        return all;
    }

    private void add(List<CurveFigure> to, CurveFit fit, JudgeSettings settings, Kind kind, SpeedRange speeds, String unit,
            ToDoubleFunction<CurveRow> figure) {
        fit.of(table.rows().stream().mapToDouble(figure).toArray()).ifPresent(column -> to.add(new CurveFigure(kind, speeds, unit,
                column.meanA(), column.meanB(), column.change().estimate(settings), column.change().interval(settings))));
    }

    private SpeedRange speeds() {
        return new SpeedRange(table.grid().at(common[0]), table.grid().at(common[common.length - 1]));
    }

    private SpeedRange peakSpeeds() {
        IntSummaryStatistics places = table.rows().stream().mapToInt(this::peakPlace).summaryStatistics();
        return new SpeedRange(table.grid().at(places.getMin()), table.grid().at(places.getMax()));
    }

    private int peakPlace(CurveRow row) {
        double peak = peak(row);
        return IntStream.of(common).filter(place -> row.values().at(place) == peak).findFirst().orElseThrow();
    }

    private double peak(CurveRow row) {
        return IntStream.of(common).mapToDouble(place -> row.values().at(place)).max().orElseThrow();
    }

    /** ∫ value dω by the trapezoid rule; a gap between common speeds is left out. */
    private double area(CurveRow row) {
        double area = 0;
        for (int j = 1; j < common.length; j++) {
            if (common[j] == common[j - 1] + 1) {
                area += table.grid().stepRadPerS() * (row.values().at(common[j - 1]) + row.values().at(common[j])) / 2;
            }
        }
        return area;
    }

    private double width() {
        long steps = IntStream.range(1, common.length).filter(j -> common[j] == common[j - 1] + 1).count();
        return steps * table.grid().stepRadPerS();
    }
}

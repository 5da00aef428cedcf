package fairpull.report;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.Estimate;
import fairpull.domain.finding.Interval;
import fairpull.domain.finding.Judgement;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Difference curves to draw. All figures are invented; they only have to look like findings, not to follow from the pulls. */
public final class CurveExamples {
    private static final double CRITICAL = 3.1;

    private CurveExamples() {
    }

    /** A gain in the upper half of the speeds, five installs of five pulls. */
    public static CurveFinding gain() {
        return finding("ABABA", 5, grid(2500, 25, 173), Units.HORSEPOWER, rpm -> 5.5 / (1 + Math.exp((4100 - rpm) / 350)), Optional.empty());
    }

    /** No change anywhere. */
    public static CurveFinding nothing() {
        return finding("ABA", 3, grid(2000, 50, 81), Units.KILOWATT, rpm -> 0.4 * Math.sin(rpm / 500), Optional.empty());
    }

    /** A loss below, a gain above, narrow stretches of both. */
    public static CurveFinding lossAndGain() {
        return finding("ABBA", 4, grid(2500, 25, 173), Units.NEWTON_METRE, rpm -> 9 * Math.sin((rpm - 4600) / 700), Optional.empty());
    }

    /** A gain that lies near the start of the sweep only. */
    public static CurveFinding atTheStart() {
        return finding("ABAB", 4, grid(2500, 25, 173), Units.HORSEPOWER, rpm -> 12 * Math.exp(-(rpm - 2500) / 300),
                Optional.of(new SpeedRange(Units.RPM.toSi(2500), Units.RPM.toSi(2775))));
    }

    /** Forty pulls at two hundred speeds. */
    public static CurveFinding large() {
        return finding("ABABABAB", 5, grid(2000, 25, 200), Units.KILOWATT, rpm -> 4, Optional.empty());
    }

    /** All of them, by a short name. */
    public static Map<String, CurveFinding> all() {
        return new TreeMap<>(Map.of("gain", gain(), "nothing", nothing(), "lossAndGain", lossAndGain(), "start", atTheStart(), "large",
                large()));
    }

    /** {@return a judgement with such a curve} */
    public static Judgement in(Judgement judgement, CurveFinding curve) {
        return new Judgement(judgement.plan(), judgement.seal(), judgement.deciding(), judgement.withExcluded(), judgement.secondary(),
                judgement.claims(), judgement.pulls(), judgement.amendments(), judgement.notices(), judgement.checks(),
                judgement.look(), Optional.of(curve));
    }

    private static SpeedGrid grid(double firstRpm, double stepRpm, int size) {
        return new SpeedGrid(Units.RPM.toSi(firstRpm), Units.RPM.toSi(stepRpm), size);
    }

    /** {@return curves of any order of installs with a true change over engine speed} */
    public static CurveFinding finding(String letters, int pullsEach, SpeedGrid grid, Unit unit, DoubleUnaryOperator change,
            Optional<SpeedRange> transientGain) {
        CurveTable table = table(letters, pullsEach, grid, unit, change);
        List<CurvePoint> points = new ArrayList<>();
        for (int place = 0; place < grid.size(); place++) {
            points.add(point(table, place, change.applyAsDouble(Units.RPM.fromSi(grid.at(place)))));
        }
        List<SpeedRange> gains = ranges(points, grid, point -> point.band().low() > 0);
        List<SpeedRange> losses = ranges(points, grid, point -> point.band().high() < 0);
        double share = gains.stream().mapToDouble(range -> range.highRadPerS() - range.lowRadPerS()).sum()
                / (grid.lastRadPerS() - grid.firstRadPerS());
        Estimate estimate = new Estimate(4.4, 0.9, 6.2, 4.9, 0.002);
        return new CurveFinding(unit, Units.RPM.toSi(100), true, 0.95, CRITICAL, 6.4, 20_000, CurveFinding.RecordUse.BAND_FIGURE, points,
                gains, losses, share, List.of(
                new CurveFigure(CurveFigure.Kind.PEAK, speeds(5400, 5650), unit.symbol(), 213.4, 218.6, estimate,
                        new Interval(0.95, 2.2, 6.6)),
                new CurveFigure(CurveFigure.Kind.MEAN, speeds(2500, 6800), unit.symbol(), 171.2, 174.9, estimate,
                        new Interval(0.95, 1.9, 6.9)),
                new CurveFigure(CurveFigure.Kind.AREA, speeds(2500, 6800), unit.symbol() + "·rpm", 735_000, 752_000,
                        new Estimate(17_000, 3_100, 6.2, 5.5, 0.001), new Interval(0.95, 9_500, 24_500))), transientGain, table);
    }

    private static SpeedRange speeds(double low, double high) {
        return new SpeedRange(Units.RPM.toSi(low), Units.RPM.toSi(high));
    }

    private static CurvePoint point(CurveTable table, int place, double change) {
        double edge = Math.abs(2.0 * place / (table.grid().size() - 1) - 1);
        double error = 0.75 + 0.5 * Math.pow(edge, 6);
        double noisy = change + 0.15 * Math.sin(place / 6.0);
        double meanA = mean(table, place, Part.A);
        return new CurvePoint(table.grid().at(place), meanA, meanA + noisy, new Estimate(noisy, error, 6.4, noisy / error, 0.01),
                new Interval(0.95, noisy - 2.4 * error, noisy + 2.4 * error),
                new Interval(0.95, noisy - CRITICAL * error, noisy + CRITICAL * error));
    }

    private static double mean(CurveTable table, int place, Part part) {
        return table.rows().stream().filter(row -> row.part() == part).mapToDouble(row -> row.values().at(place)).filter(Double::isFinite)
                .average().orElse(Double.NaN);
    }

    private interface Shown {
        boolean at(CurvePoint point);
    }

    private static List<SpeedRange> ranges(List<CurvePoint> points, SpeedGrid grid, Shown shown) {
        List<SpeedRange> ranges = new ArrayList<>();
        int from = -1;
        for (int place = 0; place <= points.size(); place++) {
            boolean here = place < points.size() && shown.at(points.get(place));
            if (here && from < 0) {
                from = place;
            } else if (!here && from >= 0) {
                ranges.add(new SpeedRange(grid.at(from), grid.at(place - 1)));
                from = -1;
            }
        }
        return ranges;
    }

    private static CurveTable table(String letters, int pullsEach, SpeedGrid grid, Unit unit, DoubleUnaryOperator change) {
        Random random = new Random(20260314);
        List<CurveRow> rows = new ArrayList<>();
        Map<Character, Integer> count = new TreeMap<>();
        double clock = 0;
        for (char letter : letters.toCharArray()) {
            String install = "" + letter + count.merge(letter, 1, Integer::sum);
            double refit = random.nextGaussian() * 0.6;
            double tilt = random.nextGaussian() * 0.5;
            for (int pull = 1; pull <= pullsEach; pull++) {
                double own = random.nextGaussian() * 0.5;
                double phase = random.nextDouble() * 6;
                int first = pull == 2 ? random.nextInt(6) : 0;
                double[] values = IntStream.range(0, grid.size()).mapToDouble(place -> {
                    double rpm = Units.RPM.fromSi(grid.at(place));
                    double level = 60 + 155 * Math.sin((rpm - 1000) / 5200 * Math.PI / 2) + 6 * Math.sin(rpm / 900);
                    return place < first ? Double.NaN : level + (letter == 'B' ? change.applyAsDouble(rpm) : 0) + refit
                            + tilt * (rpm - 4600) / 2000 + own + 0.4 * Math.sin(rpm / 260 + phase);
                }).toArray();
                rows.add(new CurveRow("Saturday", install, Part.valueOf("" + letter), install + "-" + pull, clock, Samples.of(values),
                        List.of()));
                clock += 5.2;
            }
            clock += 27;
        }
        List<PullOnGrid> resampled = rows.stream().map(row -> {
            double peak = row.values().stream().filter(Double::isFinite).max().orElseThrow();
            return new PullOnGrid(row.install(), row.part(), row.pull(), grid.firstRadPerS() - 3, grid.lastRadPerS() + 2, peak + 0.4, peak, 0);
        }).toList();
        return new CurveTable(unit, grid, Units.RPM.toSi(100), List.of(), rows, resampled);
    }
}

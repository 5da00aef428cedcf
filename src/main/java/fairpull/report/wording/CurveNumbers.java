package fairpull.report.wording;

import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** How the figures of a difference curve are printed: to what the half-width of its band deserves. */
public final class CurveNumbers {
    private static final int MOST_RANGES = 3;

    private final double halfWidth;
    private final Numbers numbers;

    private CurveNumbers(double halfWidth, String unit) {
        this.halfWidth = halfWidth;
        this.numbers = Numbers.resolving(halfWidth, unit);
    }

    /** {@return the figures of a curve} */
    public static CurveNumbers of(CurveFinding curve) {
        double[] widths = curve.points().stream().mapToDouble(point -> halfWidth(point.band(), point.estimate().change()))
                .filter(width -> width > 0 && Double.isFinite(width)).sorted().toArray();
        return new CurveNumbers(widths.length == 0 ? 1 : widths[widths.length / 2], curve.unit().symbol());
    }

    /** An interval that is open on one side has its half-width on the other. */
    private static double halfWidth(Interval interval, double change) {
        return DoubleStream.of(change - interval.low(), interval.high() - change).filter(Double::isFinite).max().orElse(Double.NaN);
    }

    /** {@return the median half-width of the band} */
    public double halfWidth() {
        return halfWidth;
    }

    /** {@return a change with its sign and unit} */
    public String signed(double change) {
        return numbers.signed(change);
    }

    /** {@return a change with its sign} */
    public String signedBare(double change) {
        return numbers.signedBare(change);
    }

    /** {@return a value} */
    public String bare(double value) {
        return numbers.bare(value);
    }

    /** {@return the ends of an interval with their signs} */
    public String ends(Interval interval) {
        return numbers.signedBare(interval.low()) + " … " + numbers.signedBare(interval.high());
    }

    /** {@return an engine speed in whole rpm} */
    public static String bareRpm(double radPerS) {
        return Numbers.resolving(10, "").bare(Units.RPM.fromSi(radPerS));
    }

    /** {@return an engine speed in whole rpm with its unit} */
    public static String rpm(double radPerS) {
        return bareRpm(radPerS) + Numbers.THIN + Units.RPM.symbol();
    }

    /** {@return a range of speeds: {@code from 3600 to 6650 rpm}, or {@code at 3600 rpm}} */
    public static String range(SpeedRange range) {
        return bareRpm(range.lowRadPerS()).equals(bareRpm(range.highRadPerS())) ? "at " + rpm(range.lowRadPerS())
                : "from " + bareRpm(range.lowRadPerS()) + " to " + rpm(range.highRadPerS());
    }

    /** {@return a range of speeds in whole rpm for a table: {@code 3600 … 6650}} */
    public static String bareRange(SpeedRange range) {
        String low = bareRpm(range.lowRadPerS());
        String high = bareRpm(range.highRadPerS());
        return low.equals(high) ? low : low + " … " + high;
    }

    /** {@return several ranges for a heading: each by itself, or where they are many how many and between which speeds} */
    public static String ranges(List<SpeedRange> ranges) {
        return areMany(ranges) ? "over " + ranges.size() + " ranges between " + bareRpm(ranges.get(0).lowRadPerS()) + " and "
                + rpm(ranges.get(ranges.size() - 1).highRadPerS()) : everyRange(ranges);
    }

    /** {@return whether a heading would be too long that named each of these ranges} */
    static boolean areMany(List<SpeedRange> ranges) {
        return ranges.size() > MOST_RANGES;
    }

    /** {@return several ranges, one after the other} */
    static String everyRange(List<SpeedRange> ranges) {
        return ranges.stream().map(CurveNumbers::range).collect(Collectors.joining(" and "));
    }
}

package fairpull.report.wording;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.plan.Part;
import fairpull.domain.unit.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which speeds each pull covers, and what its curve leaves over. */
public final class CoverageWords {
    private CoverageWords() {
    }

    /** {@return how many pulls cover every speed} */
    public static String heading(CurveTable table) {
        long whole = table.rows().stream().filter(row -> gaps(row) == 0).count();
        String speeds = " every speed from " + CurveNumbers.bareRpm(table.grid().firstRadPerS()) + " to "
                + CurveNumbers.rpm(table.grid().lastRadPerS());
        if (whole == table.rows().size()) {
            return "All " + Numbers.count(whole, "pull") + " cover" + speeds;
        }
        if (whole == 0) {
            return common(table).length == 0 ? "No speed is covered by all pulls"
                    : "All " + Numbers.count(table.rows().size(), "pull") + " cover the speeds " + commonRange(table)
                    + ", none of them" + speeds;
        }
        return whole + " of " + Numbers.count(table.rows().size(), "pull") + (whole == 1 ? " covers" : " cover") + speeds;
    }

    /** {@return which speeds all pulls cover, and which pull covers least; speeds of the grid, as everywhere} */
    static String sentence(CurveTable table) {
        if (common(table).length == 0) {
            return heading(table) + ".";
        }
        CurveRow shortest = table.rows().stream().max(Comparator.comparingLong(CoverageWords::gaps)).orElseThrow();
        return heading(table) + "." + (gaps(shortest) == 0 ? "" : " The speeds that all of them cover run " + commonRange(table)
                + "; the shortest, " + shortest.name() + ", covers " + covered(shortest, table.grid()) + ".");
    }

    /** {@return the places of the grid at which every pull has a value} */
    static int[] common(CurveTable table) {
        return IntStream.range(0, table.grid().size())
                .filter(place -> table.rows().stream().allMatch(row -> Double.isFinite(row.values().at(place)))).toArray();
    }

    private static String commonRange(CurveTable table) {
        int[] common = common(table);
        return CurveNumbers.range(new SpeedRange(table.grid().at(common[0]), table.grid().at(common[common.length - 1])));
    }

    /** {@return what to look for in the chart of residuals} */
    public static String residuals(CurveTable table, int shown) {
        long installs = table.rows().stream().map(CurveRow::install).distinct().count();
        return "A pull that leaves its install at one speed only had something of its own there: a spike, a slip, another gear. A "
                + "whole install that stands apart was strapped down otherwise, or ran at another hour."
                + (installs > shown ? " The first " + shown + " of " + installs + " installs are drawn." : "");
    }

    /** {@return what the lines of the chart of residuals mean} */
    public static String residualCaption() {
        return "Faint lines: each pull less the mean of its install. The strong line: the mean of the install less the mean of the "
                + "installs of its part. All panels have the same scale.";
    }

    /** {@return what smoothing to the bandwidth did to the peaks; empty where the curves were given as they are} */
    public static Optional<String> peaks(CurveFinding curve) {
        List<PullOnGrid> pulls = curve.curves().resampled().stream().filter(pull -> Double.isFinite(pull.gridPeak())).toList();
        if (Stream.of(Part.values()).anyMatch(part -> pulls.stream().noneMatch(pull -> pull.part() == part))) {
            return Optional.empty();
        }
        Numbers numbers = Numbers.resolving(CurveNumbers.of(curve).halfWidth(), curve.unit().symbol()).finer();
        return Optional.of("Smoothing to the bandwidth, over the speeds of the grid alone, changes the largest value of a pull by "
                + numbers.signed(lost(pulls, Part.A))
                + " with A and by " + numbers.signed(lost(pulls, Part.B)) + " with B, on average. What is the same in both cannot change "
                + "the difference. " + PeakWords.where(curve.curves())).map(String::strip);
    }

    private static double lost(List<PullOnGrid> pulls, Part part) {
        return pulls.stream().filter(pull -> pull.part() == part).mapToDouble(pull -> pull.gridPeak() - pull.rawPeak()).average()
                .orElseThrow();
    }

    /** {@return the speeds between the first and the last value of a pull} */
    public static String covered(CurveRow row, SpeedGrid grid) {
        int[] places = IntStream.range(0, row.values().size()).filter(place -> Double.isFinite(row.values().at(place))).toArray();
        return places.length == 0 ? "none" : CurveNumbers.bareRpm(grid.at(places[0])) + " to "
                + CurveNumbers.rpm(grid.at(places[places.length - 1]));
    }

    /** {@return at how many speeds of the grid a pull has no value} */
    public static String missing(CurveRow row) {
        return Long.toString(gaps(row));
    }

    private static long gaps(CurveRow row) {
        return row.values().stream().filter(value -> !Double.isFinite(value)).count();
    }

    /** {@return over the table of speeds} */
    public static String pointsHeading(double stepRpm) {
        return "The change every " + Numbers.given(stepRpm, Units.RPM.symbol());
    }

    /** {@return what the two intervals of the table are for} */
    public static String pointsNote() {
        return "The band holds for all speeds at once: use it for a speed picked after looking. The interval of one speed holds for a "
                + "speed that was named before the day.";
    }
}

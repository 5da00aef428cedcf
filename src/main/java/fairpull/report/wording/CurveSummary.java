package fairpull.report.wording;

import fairpull.domain.curve.PullOnGrid;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.finding.CurveFigure;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a difference curve shows and how its band was made, line by line, for where there are no charts; what is
 * shown stands in the sentences of {@link CurveWords}.
 */
public final class CurveSummary {
    private CurveSummary() {
    }

    /** {@return everything there is to say of a curve: what is shown, the figures, how it was made} */
    public static List<Said> all(CurveFinding finding) {
        List<Said> said = new ArrayList<>();
        said.add(new Said("Over engine speed", Stream.concat(Stream.of(CurveWords.ranges(finding) + "."),
                CurveWords.shown(finding).stream()).collect(Collectors.joining(" "))));
        finding.figures().forEach(figure -> said.add(figure(figure)));
        said.add(band(finding));
        said.add(grid(finding));
        if (!finding.curves().resampled().isEmpty()) {
            CoverageWords.peaks(finding).ifPresent(peaks -> said.add(new Said("What the grid does to peaks", peaks)));
            said.add(new Said("Covered", CoverageWords.sentence(finding.curves())));
        }
        return said;
    }

    private static Said figure(CurveFigure figure) {
        Interval interval = figure.interval();
        double change = figure.estimate().change();
        double reach = Math.min(Math.abs(change - interval.low()), Math.abs(interval.high() - change));
        Numbers numbers = Numbers.resolving(reach, figure.unit());
        String name = CurveWords.figure(figure.kind());
        return new Said(name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1), numbers.with(figure.meanA()) + " with A, "
                + numbers.with(figure.meanB()) + " with B: "
                + numbers.signed(change) + ", " + CheckWords.level(interval) + " " + CheckWords.ends(numbers, interval)
                + "; " + CurveWords.figureSpeeds(figure) + ".");
    }

    private static Said band(CurveFinding finding) {
        Numbers numbers = Numbers.resolving(finding.criticalValue() / 10, "");
        return new Said("The band", Numbers.level(finding.level()) + " for all speeds at once: "
                + numbers.bare(finding.criticalValue()) + " standard errors to "
                + (isOneSided(finding) ? "the side of a loss" : "either side") + ", from the largest of correlated t statistics with "
                + Numbers.withDegreesOfFreedom(finding.degreesOfFreedom()) + " (" + finding.draws() + " draws). "
                + record(finding.recordUsed()));
    }

    private static String speeds(CurveFinding finding) {
        List<CurvePoint> points = finding.points();
        return points.size() + " speeds " + CurveNumbers.range(new SpeedRange(points.get(0).speedRadPerS(),
                points.get(points.size() - 1).speedRadPerS()));
    }

    private static boolean isOneSided(CurveFinding finding) {
        Interval band = finding.points().get(0).band();
        return Double.isInfinite(band.low()) != Double.isInfinite(band.high());
    }

    private static String record(CurveFinding.RecordUse use) {
        return switch (use) {
            case OWN_DATA -> "Refit scatter is estimated from these pulls alone.";
            case BAND_FIGURE -> "Refit scatter is pooled with the record's figure for the whole band, the same share of the level at every "
                    + "speed.";
            case EACH_SPEED -> "Refit scatter is pooled with the record's figure for each speed.";
        };
    }

    private static Said grid(CurveFinding finding) {
        String step = speeds(finding) + ", every " + CurveNumbers.rpm(finding.curves().grid().stepRadPerS());
        if (finding.bandwidthRadPerS() == 0) {
            return new Said("The grid", step + ", as the curves were given.");
        }
        String made = step + ", by local linear fits that reach " + CurveNumbers.rpm(finding.bandwidthRadPerS())
                + " to either side; nothing is "
                + "extrapolated.";
        int lines = finding.curves().resampled().stream().mapToInt(PullOnGrid::interpolated).sum();
        return new Said("The grid", made + (lines == 0 ? "" : " Fewer than three recorded speeds lay within that reach at " + lines
                + " places of all pulls together: there neighbours are joined by a straight line.")
                + (finding.declared() ? " Declared before the day." : " Not declared before the day: the speeds are those that all pulls "
                + "cover."));
    }
}

package fairpull.report.wording;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurveQuestion;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;

/** How the curves were judged, with everything that is needed to do it again. */
public final class CurveMethodWords {
    private CurveMethodWords() {
    }

    /** {@return the methods in sentences} */
    public static List<String> paragraphs(CurveFinding curve) {
        return List.of(grid(curve), model(curve), band(curve), again());
    }

    /** {@return each setting with its figure} */
    public static List<Said> settings(CurveFinding curve) {
        SpeedGrid grid = curve.curves().grid();
        List<Said> said = new ArrayList<>();
        said.add(new Said("Grid", CurveNumbers.bareRpm(grid.firstRadPerS()) + " to " + CurveNumbers.rpm(grid.lastRadPerS()) + ", every "
                + Numbers.given(Units.RPM.fromSi(grid.stepRadPerS()), "rpm") + ", " + grid.size() + " speeds, "
                + curve.points().size() + " of them judged; "
                + (curve.declared() ? "from the plan" : "not in the plan, set by what the pulls cover")));
        said.add(new Said("Bandwidth", "± " + Numbers.given(Units.RPM.fromSi(curve.bandwidthRadPerS()), "rpm")
                + ", to either side of each speed"));
        said.add(new Said("Level", Numbers.level(curve.level())));
        said.add(new Said("Critical value of the band", Numbers.given(curve.criticalValue())));
        said.add(new Said("Degrees of freedom", Numbers.given(curve.degreesOfFreedom()) + ", median over the speeds"));
        said.add(new Said("Directions drawn", curve.draws() + ", seed " + CurveQuestion.SEED));
        said.add(new Said("Refit scatter", record(curve)));
        return said;
    }

    private static String grid(CurveFinding curve) {
        return "Every counted pull is brought onto the same engine speeds by a local straight line: at each speed, least squares over the "
                + "samples within " + CurveNumbers.rpm(curve.bandwidthRadPerS()) + " of it, weighted by 1 − (distance ÷ bandwidth)². "
                + "A speed that a pull does not cover has no value there; nothing is carried beyond its ends.";
    }

    private static String model(CurveFinding curve) {
        return "At each speed the change is estimated by the same model as the deciding measure: level of the session, change where B "
                + "is fitted, the drift and covariates of the plan, refit scatter (one draw per install) and pull scatter (one draw per "
                + "pull). Refit scatter rests on " + record(curve) + ".";
    }

    private static String record(CurveFinding curve) {
        return switch (curve.recordUsed()) {
            case OWN_DATA -> "the data of the day alone";
            case BAND_FIGURE -> "the relative figure of the rig record for the band, taken to be the same at every speed";
            case EACH_SPEED -> "the relative figures of the rig record for each speed";
        };
    }

    private static String band(CurveFinding curve) {
        return "The band is change ± critical value × standard error. The critical value, " + Numbers.given(curve.criticalValue())
                + ", is the " + Numbers.level(curve.level()) + " quantile of the largest |t| over all speeds, a multivariate t with "
                + Numbers.withDegreesOfFreedom(curve.degreesOfFreedom()) + " whose correlation is that of the residual curves within and "
                + "between installs; " + curve.draws() + " directions are drawn, length and scatter integrated. Where the interval of one "
                + "speed reaches further, the band reaches as far as that. A gain is shown where the whole band lies beyond zero and, "
                + "with unequal pulls and no record, the test on install means agrees.";
    }

    private static String again() {
        return "To redo it: `fairpull report TEST --csv FOLDER` writes every pull on the grid, the change at every speed with standard "
                + "error, degrees of freedom, interval and band, the settings above in full precision, and the table of pulls that "
                + "`fairpull judge --table` reads.";
    }
}

package fairpull.domain.heat;

import fairpull.domain.pull.Samples;
import java.util.List;

/**
 * A cool-down fitted as ambient + a·e^(−t/τ), or with a second exponential.
 *
 * @param modes the exponentials, the quicker first
 * @param ambientK what the temperature falls towards
 * @param ambientErrorK its standard error; 0 where it was given
 * @param ambientGiven whether it was given and not fitted
 * @param residualDeviationK standard deviation of the readings about the curve
 * @param degreesOfFreedom behind standard errors and intervals, less where readings follow one another
 * @param serialCorrelation of neighbouring residuals
 * @param level of the intervals
 * @param told whether the readings tell every parameter; where not, no figure of the fit means anything
 * @param residualsK readings less curve
 * @param covariance of ln τ of each mode, then of each amplitude, then of a fitted ambient; row by row
 */
public record CoolDownFit(List<FittedMode> modes, double ambientK, double ambientErrorK, boolean ambientGiven, double residualDeviationK,
                          double degreesOfFreedom, double serialCorrelation, double level, boolean told, Samples residualsK,
                          Samples covariance) {
    public CoolDownFit {
        modes = List.copyOf(modes);
        if (modes.isEmpty() || modes.size() > 2) {
            throw new IllegalArgumentException("one or two time constants, were " + modes.size());
        }
    }

    /** {@return the fitted temperature at a time since the first reading} */
    public double atK(double timeS) {
        double sum = ambientK;
        for (FittedMode mode : modes) {
            sum += mode.amplitudeK() * Math.exp(-timeS / mode.timeConstantS());
        }
        return sum;
    }

    /** {@return the fitted excess over ambient at the first reading} */
    public double startExcessK() {
        return modes.stream().mapToDouble(FittedMode::amplitudeK).sum();
    }

    /** {@return the modes with the shares that they have at the first reading} */
    public List<Mode> shares() {
        double whole = startExcessK();
        return modes.stream().map(mode -> new Mode(mode.timeConstantS(), Math.min(1, mode.amplitudeK() / whole))).toList();
    }
}

package fairpull.domain.heat;

import java.util.OptionalDouble;

/**
 * One time constant or two, and why. Two are taken only where every reason against them fails.
 *
 * @param reason what decided
 * @param pValue of the F test of the second exponential against none; empty where it was not fitted
 * @param criterionGain by how much the corrected Akaike criterion falls with the second; empty likewise
 * @param chosen the fit that is used
 */
public record ModeChoice(Reason reason, OptionalDouble pValue, OptionalDouble criterionGain, CoolDownFit chosen) {
    /** What decided between one time constant and two. */
    public enum Reason {
        /** The log supports two. */
        TWO_SUPPORTED,
        /** Fewer readings than a second exponential may be asked of. */
        TOO_FEW_READINGS,
        /** The second exponential could not be told from the first at all. */
        NOT_TOLD_APART,
        /** An exponential came out negative: that is a rise, not a cool-down. */
        NEGATIVE_AMPLITUDE,
        /** The second exponential explains no more than chance would. */
        NO_BETTER_THAN_CHANCE,
        /** The corrected Akaike criterion does not fall. */
        NOT_WORTH_ITS_PARAMETERS,
        /** The two amplitudes are so correlated that one could stand for the other. */
        AMPLITUDES_CORRELATED,
        /** One of the two time constants is not known to within a factor. */
        TIME_CONSTANT_LOOSE
    }

    /** {@return whether two time constants are used} */
    public boolean isTwo() {
        return reason == Reason.TWO_SUPPORTED;
    }
}

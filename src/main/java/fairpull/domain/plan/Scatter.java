package fairpull.domain.plan;

/**
 * A standard deviation of the deciding measure and how well it is known.
 *
 * @param standardDeviationSi the scatter
 * @param degreesOfFreedom how much evidence is behind it: 0 is a planning value and no record, infinity is taken as known
 * @param origin where the figure is from
 */
public record Scatter(double standardDeviationSi, double degreesOfFreedom, Origin origin) {
    /** Where a scatter figure is from. */
    public enum Origin {
        RIG_RECORD, PILOT_PULLS, TYPED_IN, STARTING_GUESS
    }

    public Scatter {
        Checks.positive("a scatter", standardDeviationSi);
        if (!(degreesOfFreedom >= 0)) {
            throw new IllegalArgumentException("degrees of freedom must be 0 or more, were " + degreesOfFreedom);
        }
    }

    /** {@return whether nobody measured this figure} */
    public boolean isGuess() {
        return origin == Origin.STARTING_GUESS;
    }

    /** {@return whether this figure takes part in the judgement, or only in planning} */
    public boolean isRecord() {
        return degreesOfFreedom > 0;
    }
}

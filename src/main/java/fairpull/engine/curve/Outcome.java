package fairpull.engine.curve;

import fairpull.domain.unit.Quantity;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** What became of a measure in one pull: a value, or the reason why there is none. */
public sealed interface Outcome {

    /** {@return what one of the two functions makes of this outcome} */
    <R> R match(Function<Value, R> value, Function<Missing, R> missing);

    /**
     * The measure has a value.
     *
     * @param si the value in SI
     * @param runs how many runs the pull holds that would give a value, of which the first one counts; 1 for all but measures of time
     */
    record Value(double si, int runs) implements Outcome {
        public Value {
            if (!Double.isFinite(si)) {
                throw new IllegalArgumentException("a value must be finite, was " + si);
            }
            if (runs < 1) {
                throw new IllegalArgumentException("a value comes from at least one run, was " + runs);
            }
        }

        @Override
        public <R> R match(Function<Value, R> value, Function<Missing, R> missing) {
            return value.apply(this);
        }
    }

    /**
     * The measure has no value.
     *
     * @param reason why
     * @param channel the channel that the reason is about
     * @param covered what that channel does cover, where the reason is about coverage
     */
    record Missing(Reason reason, Quantity channel, Optional<Coverage> covered) implements Outcome {
        public Missing {
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(channel, "channel");
            Objects.requireNonNull(covered, "covered");
        }

        @Override
        public <R> R match(Function<Value, R> value, Function<Missing, R> missing) {
            return missing.apply(this);
        }
    }

    /** Why a pull has no value of a measure. */
    enum Reason {
        /** The pull does not hold the channel, nor what it could be computed from. */
        CHANNEL_ABSENT,
        /** No rising run of engine speed (at full throttle, where the throttle is known): nothing that could be a sweep. */
        NO_SWEEP,
        /** Tip-in and lift-off, as the plan drops them, leave nothing of the sweep. */
        NOTHING_SCORED,
        /** The pedal never steps to full. */
        NO_PEDAL_STEP,
        /** After the step the channel never comes to the share from below. */
        NO_RESPONSE,
        /** The sweep ends short of the band; nothing is extrapolated. */
        BAND_NOT_COVERED,
        /** The sweep does not reach the engine speed that is asked for. */
        SPEED_NOT_COVERED,
        /** No run goes from below the first speed up to the second. */
        SPEEDS_NOT_PASSED,
        /** A time stamp is not later than the one before it. */
        TIME_NOT_RISING,
        /** The measure is typed in by hand and never read from channels. */
        TYPED_BY_HAND
    }

    /**
     * The range that a channel covers.
     *
     * @param lowSi the lowest value
     * @param highSi the highest value
     */
    record Coverage(double lowSi, double highSi) {
    }

    /** {@return an outcome with one value} */
    static Outcome value(double si) {
        return new Value(si, 1);
    }

    /** {@return an outcome without a value, the reason not being coverage} */
    static Outcome missing(Reason reason, Quantity channel) {
        return new Missing(reason, channel, Optional.empty());
    }

    /** {@return an outcome without a value because the channel only covers that range} */
    static Outcome missing(Reason reason, Quantity channel, double lowSi, double highSi) {
        return new Missing(reason, channel, Optional.of(new Coverage(lowSi, highSi)));
    }
}

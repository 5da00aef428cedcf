package fairpull.domain.plan;

import fairpull.domain.unit.Quantity;
import java.util.EnumSet;
import java.util.Set;

/** How the value of a pull comes about. */
public sealed interface Definition {

    /** {@return the quantity of the value} */
    Quantity quantity();

    /** {@return the channels of an export that the value is read from; none where it is typed by hand} */
    Set<Quantity> channels();

    /** {@return whether the value is read off a curve over engine speed, and so depends on how the curve was smoothed} */
    default boolean isReadOffCurve() {
        return channels().contains(Quantity.ENGINE_SPEED) && quantity() != Quantity.TIME;
    }

    /** {@return what {@code cases} makes of this definition} */
    <R> R match(Cases<R> cases);

    /** One answer a kind of definition. */
    interface Cases<R> {
        R meanOverBand(MeanOverBand band);

        R peak(Peak peak);

        R atSpeed(AtSpeed at);

        R elapsed(Elapsed elapsed);

        R response(Response response);

        R typed(Typed typed);
    }

    /** The mean of a channel over a band of engine speed, every speed weighing alike. */
    record MeanOverBand(Quantity quantity, double lowRadPerS, double highRadPerS) implements Definition {
        public MeanOverBand {
            if (!(lowRadPerS >= 0 && highRadPerS > lowRadPerS)) {
                throw new IllegalArgumentException("a band needs 0 ≤ low < high, was " + lowRadPerS + " … " + highRadPerS + " rad/s");
            }
        }

        @Override
        public Set<Quantity> channels() {
            return EnumSet.of(quantity, Quantity.ENGINE_SPEED);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.meanOverBand(this);
        }
    }

    /** The largest value of a channel in the pull. */
    record Peak(Quantity quantity) implements Definition {
        @Override
        public Set<Quantity> channels() {
            return EnumSet.of(quantity, Quantity.ENGINE_SPEED);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.peak(this);
        }
    }

    /** The value of a channel at one engine speed. */
    record AtSpeed(Quantity quantity, double speedRadPerS) implements Definition {
        public AtSpeed {
            if (!(speedRadPerS > 0)) {
                throw new IllegalArgumentException("an engine speed must be positive, was " + speedRadPerS + " rad/s");
            }
        }

        @Override
        public Set<Quantity> channels() {
            return EnumSet.of(quantity, Quantity.ENGINE_SPEED);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.atSpeed(this);
        }
    }

    /**
     * The time from one speed to a higher one.
     *
     * @param speed which speed: of the engine or of the car
     * @param fromSi where the watch starts, rad/s or m/s
     * @param toSi where it stops
     */
    record Elapsed(Quantity speed, double fromSi, double toSi) implements Definition {
        public Elapsed {
            if (speed != Quantity.SPEED && speed != Quantity.ENGINE_SPEED) {
                throw new IllegalArgumentException("elapsed time runs between two speeds, not values of " + speed.words());
            }
            if (!(fromSi >= 0 && toSi > fromSi)) {
                throw new IllegalArgumentException(
                        "elapsed time needs 0 ≤ from < to, was " + fromSi + " … " + toSi + " " + speed.siSymbol());
            }
        }

        @Override
        public Quantity quantity() {
            return Quantity.TIME;
        }

        @Override
        public Set<Quantity> channels() {
            return EnumSet.of(speed, Quantity.TIME);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.elapsed(this);
        }
    }

    /**
     * The time from a step of the pedal until a channel first comes to a share of what it then reaches. It says how a car answers, not what
     * it makes: a quicker pedal map shortens it and adds nothing at full throttle.
     *
     * @param of torque or power
     * @param share the share, above 0 and below 1
     */
    record Response(Quantity of, double share) implements Definition {
        public Response {
            if (of != Quantity.TORQUE && of != Quantity.POWER) {
                throw new IllegalArgumentException("a response is one of torque or power, not of " + of.words());
            }
            Checks.inOpenUnitRange("the share of a response", share);
        }

        @Override
        public Quantity quantity() {
            return Quantity.TIME;
        }

        @Override
        public Set<Quantity> channels() {
            return EnumSet.of(of, Quantity.TIME, Quantity.FRACTION);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.response(this);
        }
    }

    /** A value read off elsewhere and typed in: an elapsed time, a trap speed, anything with a unit. */
    record Typed(Quantity quantity) implements Definition {
        @Override
        public Set<Quantity> channels() {
            return EnumSet.noneOf(Quantity.class);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.typed(this);
        }
    }
}

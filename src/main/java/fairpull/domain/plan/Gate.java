package fairpull.domain.plan;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A condition that must hold before a pull starts.
 *
 * @param condition what is read
 * @param limit what it is held against
 */
public record Gate(Condition condition, Limit limit) {
    public Gate {
        Objects.requireNonNull(condition, "the condition of a gate");
        Objects.requireNonNull(limit, "the limit of gate " + condition.id());
    }

    /**
     * {@return whether the gate holds for a reading}
     *
     * @param readingSi what was read
     * @param referenceSi what was read at the reference pull; a gate near the reference holds where there is none
     */
    public boolean holds(double readingSi, OptionalDouble referenceSi) {
        return limit.match(new Limit.Cases<>() {
            @Override
            public Boolean window(Window window) {
                return window.lowSi() <= readingSi && readingSi <= window.highSi();
            }

            @Override
            public Boolean nearReference(NearReference near) {
                return referenceSi.isEmpty() || Math.abs(readingSi - referenceSi.getAsDouble()) <= near.toleranceSi();
            }
        });
    }

    /** What a reading is held against. */
    public sealed interface Limit {
        /** {@return what {@code cases} makes of this limit} */
        <R> R match(Cases<R> cases);

        /** One answer a kind of limit. */
        interface Cases<R> {
            R window(Window window);

            R nearReference(NearReference near);
        }
    }

    /** Two fixed ends. */
    public record Window(double lowSi, double highSi) implements Limit {
        public Window {
            if (!(lowSi < highSi)) {
                throw new IllegalArgumentException("a gate needs low < high, was " + lowSi + " … " + highSi);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.window(this);
        }
    }

    /** Within so much of the reference pull, the first counted pull of the first install. */
    public record NearReference(double toleranceSi) implements Limit {
        public NearReference {
            Checks.positive("the tolerance of a gate", toleranceSi);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.nearReference(this);
        }
    }
}

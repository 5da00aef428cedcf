package fairpull.engine.curve;

import fairpull.domain.plan.ScoredWindow;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Optional;

/**
 * The rows of a pull in which the engine speed sweeps upward at full throttle.
 *
 * @param first the first row, counted from 0
 * @param last the last row, included
 */
public record Sweep(int first, int last) {
    public Sweep {
        if (first < 0 || last <= first) {
            throw new IllegalArgumentException("a sweep needs at least two rows, was " + first + " … " + last);
        }
    }

    /** {@return the sweep that counts: of several the one in which engine speed rises most; empty if there is none} */
    public static Optional<Sweep> of(Channels channels) {
        return Sweeps.largest(channels);
    }

    /**
     * The part of the sweep that is scored: what the window drops at either end is left out. For a table that runs downward the ends are
     * those of engine speed, not of the rows.
     *
     * @param channels the channels of the pull, with time where the window asks for it
     * @return the rows that count; empty if fewer than two are left
     */
    Optional<Sweep> scored(Channels channels, ScoredWindow window) {
        Samples speed = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        double low = Math.min(speed.at(first), speed.at(last)) + window.tipInRadPerS().orElse(0);
        double high = Math.max(speed.at(first), speed.at(last)) - window.liftOffRadPerS().orElse(0);
        int from = first;
        int to = last;
        if (window.needsTime()) {
            Samples time = channels.find(Quantity.TIME).orElseThrow();
            double start = time.at(first) + window.tipInS().orElse(0);
            double end = time.at(last) - window.liftOffS().orElse(0);
            while (from < last && time.at(from) < start) {
                from++;
            }
            while (to > from && time.at(to) > end) {
                to--;
            }
        }
        while (from < to && !(speed.at(from) >= low && speed.at(from) <= high)) {
            from++;
        }
        while (to > from && !(speed.at(to) >= low && speed.at(to) <= high)) {
            to--;
        }
        return to > from ? Optional.of(new Sweep(from, to)) : Optional.empty();
    }
}

package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Optional;

/**
 * The rows of a pull in which the engine speed sweeps upward.
 *
 * <p>A run of rising speed ends where the speed has fallen by more than {@value #REVERSAL_SHARE} of its whole range below the highest
 * value so far, so that noise does not cut a sweep in two; of several runs the one with the largest rise counts.
 * The run stops at its highest speed (what falls after lift-off stays out) and starts where the speed leaves the neighbourhood of its
 * lowest (idling before stays out). Both shares: common practice, no source.
 *
 * @param first the first row, counted from 0
 * @param last the last row, included
 */
public record Sweep(int first, int last) {
    static final double REVERSAL_SHARE = 0.05;
    static final double IDLE_SHARE = 0.02;

    public Sweep {
        if (first < 0 || last <= first) {
            throw new IllegalArgumentException("a sweep needs at least two rows, was " + first + " … " + last);
        }
    }

    /**
     * Finds the sweep. A table without time whose speed only falls or only rises is taken whole: there the order of the rows means nothing.
     *
     * @return the rows of the sweep; empty if the speed is absent or never rises
     */
    public static Optional<Sweep> of(Channels channels) {
        Optional<Samples> speed = channels.find(Quantity.ENGINE_SPEED);
        if (speed.isEmpty() || speed.get().size() < 2) {
            return Optional.empty();
        }
        if (channels.find(Quantity.TIME).isEmpty() && neverRises(speed.get())) {
            return new Sweep(0, speed.get().size() - 1).ifSpeedChanges(speed.get());
        }
        return largestRise(speed.get()).map(run -> run.withoutIdling(speed.get()));
    }

    private static boolean neverRises(Samples speed) {
        for (int row = 1; row < speed.size(); row++) {
            if (speed.at(row) > speed.at(row - 1)) {
                return false;
            }
        }
        return true;
    }

    private Optional<Sweep> ifSpeedChanges(Samples speed) {
        return speed.at(first) == speed.at(last) ? Optional.empty() : Optional.of(this);
    }

    private static Optional<Sweep> largestRise(Samples speed) {
        double range = speed.stream().max().orElseThrow() - speed.stream().min().orElseThrow();
        double reversal = REVERSAL_SHARE * range;
        int low = 0;
        int high = 0;
        Optional<Sweep> best = Optional.empty();
        double bestRise = 0;
        for (int row = 1; row < speed.size(); row++) {
            double now = speed.at(row);
            if (now > speed.at(high)) {
                high = row;
                double rise = now - speed.at(low);
                if (rise > bestRise) {
                    bestRise = rise;
                    best = Optional.of(new Sweep(low, high));
                }
            } else if (now <= speed.at(low) || now < speed.at(high) - reversal) {
                low = row;
                high = row;
            }
        }
        return best;
    }

    private Sweep withoutIdling(Samples speed) {
        double limit = speed.at(first) + IDLE_SHARE * (speed.at(last) - speed.at(first));
        int start = first;
        for (int row = first; row < last; row++) {
            if (speed.at(row) <= limit) {
                start = row;
            }
        }
        while (start > first && speed.at(start - 1) < speed.at(start)) {
            start--;
        }
        return new Sweep(start, last);
    }
}

package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The full-throttle sweeps in a log.
 *
 * <p>Where a channel of the throttle is there, sweeps are looked for within its stretches of full opening ({@link Throttle}); where it is
 * not, wherever engine speed rises. A rise ends where the speed has fallen by more than {@value #REVERSAL_SHARE} of its whole range below
 * the highest value so far, so that noise does not cut a sweep in two. A sweep stops at its highest speed (what falls after lift-off stays
 * out) and starts where the speed leaves the neighbourhood of its lowest, {@value #IDLE_SHARE} of the rise (idling before stays out). Rises
 * below {@value #SWEEP_SHARE} of the largest one are none. All shares: common practice, no source.
 */
public final class Sweeps {
    static final double REVERSAL_SHARE = 0.05;
    static final double IDLE_SHARE = 0.02;
    static final double SWEEP_SHARE = 0.5;

    private Sweeps() {
    }

    /**
     * Finds the sweeps of a log. A table without time whose speed only falls or only rises is taken whole: there the order of the rows
     * means nothing.
     *
     * @param channels the channels of a log in SI, rows in the order in which they were recorded
     * @return the sweeps in their order; none if engine speed is absent, never rises, or never does so at full throttle
     */
    public static List<Sweep> of(Channels channels) {
        return of(channels, SWEEP_SHARE);
    }

    /** {@return the rises of a log, those below a share of the largest one left out} */
    static List<Sweep> of(Channels channels, double leastShare) {
        List<Sweep> rises = rises(channels, leastShare);
        return rises.isEmpty() ? rises : rises.stream().map(rise -> withoutIdling(rise, engineSpeed(channels))).toList();
    }

    /** {@return the sweep in which engine speed rises most, the first of equals} */
    static Optional<Sweep> largest(Channels channels) {
        return rises(channels, SWEEP_SHARE).stream().reduce((best, next) -> height(next, channels) > height(best, channels) ? next : best)
                .map(rise -> withoutIdling(rise, engineSpeed(channels)));
    }

    private static List<Sweep> rises(Channels channels, double leastShare) {
        Optional<Samples> speed = channels.find(Quantity.ENGINE_SPEED);
        if (speed.isEmpty() || speed.get().size() < 2) {
            return List.of();
        }
        if (channels.find(Quantity.TIME).isEmpty() && neverRises(speed.get())) {
            return whole(speed.get());
        }
        Rises rises = new Rises(speed.get(), REVERSAL_SHARE);
        List<Sweep> found = new ArrayList<>();
        stretches(channels).forEach(stretch -> found.addAll(rises.between(stretch.first(), stretch.last())));
        double least = leastShare * found.stream().mapToDouble(rise -> height(rise, channels)).max().orElse(0);
        return found.stream().filter(rise -> height(rise, channels) >= least).toList();
    }

    static double height(Sweep rise, Channels channels) {
        Samples speed = engineSpeed(channels);
        return speed.at(rise.last()) - speed.at(rise.first());
    }

    private static Samples engineSpeed(Channels channels) {
        return channels.find(Quantity.ENGINE_SPEED).orElseThrow();
    }

    static Channels cut(Channels channels, Sweep sweep) {
        Map<Quantity, Samples> cut = new EnumMap<>(Quantity.class);
        channels.all().forEach((quantity, samples) -> cut.put(quantity, samples.between(sweep.first(), sweep.last() + 1)));
        return new Channels(cut);
    }

    private static List<Sweep> stretches(Channels channels) {
        return channels.find(Quantity.FRACTION).map(opening -> Throttle.of(opening).stretches())
                .orElseGet(() -> List.of(new Sweep(0, channels.rows() - 1)));
    }

    private static boolean neverRises(Samples speed) {
        for (int row = 1; row < speed.size(); row++) {
            if (speed.at(row) > speed.at(row - 1)) {
                return false;
            }
        }
        return true;
    }

    private static List<Sweep> whole(Samples speed) {
        return speed.at(0) == speed.at(speed.size() - 1) ? List.of() : List.of(new Sweep(0, speed.size() - 1));
    }

    private static Sweep withoutIdling(Sweep rise, Samples speed) {
        if (speed.at(rise.last()) < speed.at(rise.first())) {
            return rise;
        }
        double limit = speed.at(rise.first()) + IDLE_SHARE * (speed.at(rise.last()) - speed.at(rise.first()));
        int start = rise.first();
        for (int row = rise.first(); row < rise.last(); row++) {
            if (speed.at(row) <= limit) {
                start = row;
            }
        }
        while (start > rise.first() && speed.at(start - 1) < speed.at(start)) {
            start--;
        }
        return new Sweep(start, rise.last());
    }
}

package fairpull.engine.curve;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Whether the sweeps of pulls can be compared: found at all, at full throttle, in one gear, without slip, at one rate.
 *
 * <p>Rate and ratio are held against the first pull. The rate is the mean one over the engine speeds that both sweeps share. Limits: rate
 * ±{@value #RATE_LIMIT}, ratio of engine speed to the speed of roller or car within {@value #RATIO_LIMIT}, throttle at
 * {@value Throttle#FULL_SHARE} of the first pull's (all common practice, no source). What a pull has no channel for is not checked.
 */
public final class SweepCheck {
    static final double RATE_LIMIT = 0.05;
    static final double RATIO_LIMIT = 0.01;
    /** Crossing times at the very ends of a sweep hang on single rows. */
    private static final double END_SHARE = 0.02;
    private static final double SHARED_AT_LEAST = 0.5;

    private SweepCheck() {
    }

    /**
     * A pull and what it shows.
     *
     * @param name which one
     * @param channels its channels in SI, engine speed among them
     */
    public record Pull(String name, Channels channels) {
        public Pull {
            if (channels.find(Quantity.ENGINE_SPEED).isEmpty()) {
                throw new IllegalArgumentException("pull " + name + " has no engine speed");
            }
        }
    }

    private record Seen(String name, Channels channels, Optional<Sweep> sweep, int sweeps, OptionalDouble opening,
            Optional<SpeedRatio> ratio) {
        static Seen of(Pull pull) {
            Channels channels = pull.channels();
            Optional<Sweep> sweep = Sweep.of(channels);
            OptionalDouble opening = channels.find(Quantity.FRACTION).map(samples -> Throttle.steady(samples, 0, samples.size() - 1))
                    .orElse(OptionalDouble.empty());
            return new Seen(pull.name(), channels, sweep, Sweeps.of(channels).size(), opening,
                    sweep.flatMap(rows -> SpeedRatio.of(channels, rows)));
        }
    }

    /** {@return what is doubtful about the sweeps of pulls, the reference pull first among them} */
    public static List<Notice> of(List<Pull> pulls) {
        List<Seen> all = pulls.stream().map(Seen::of).toList();
        List<Notice> notices = new ArrayList<>();
        if (all.isEmpty()) {
            return notices;
        }
        Seen reference = all.get(0);
        named(notices, Code.SWEEP_NOT_FOUND, all.stream().filter(seen -> seen.sweep().isEmpty()).toList());
        named(notices, Code.SWEEPS_SEVERAL, all.stream().filter(seen -> seen.sweeps() > 1).toList());
        named(notices, Code.GEAR_CHANGED, all.stream().filter(seen -> seen.ratio().filter(SpeedRatio::gearChanged).isPresent()).toList());
        measured(notices, Code.THROTTLE_NEVER_FULL, all, seen -> fallsShort(seen, reference));
        measured(notices, Code.SLIP, all, seen -> seen.ratio().filter(ratio -> !ratio.gearChanged()).map(SpeedRatio::spread)
                .filter(spread -> spread > RATIO_LIMIT));
        measured(notices, Code.SPEED_RATIO_DIFFERS, all, seen -> beyond(RATIO_LIMIT, ratioAgainst(seen, reference)));
        measured(notices, Code.SWEEP_RATE_DIFFERS, all, seen -> beyond(RATE_LIMIT, rateAgainst(seen, reference)));
        return notices;
    }

    private static Optional<Double> fallsShort(Seen seen, Seen reference) {
        if (seen.opening().isEmpty() || reference.opening().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(seen.opening().getAsDouble() / reference.opening().getAsDouble()).filter(share -> share < Throttle.FULL_SHARE);
    }

    private static Optional<Double> ratioAgainst(Seen seen, Seen reference) {
        return reference.ratio().flatMap(first -> seen.ratio().map(ratio -> ratio.radPerM() / first.radPerM() - 1));
    }

    /** The rate of a pull over that of the reference is the inverse of their times over the same engine speeds. */
    private static Optional<Double> rateAgainst(Seen seen, Seen reference) {
        if (seen.sweep().isEmpty() || reference.sweep().isEmpty()) {
            return Optional.empty();
        }
        Samples own = speed(seen);
        Samples other = speed(reference);
        double from = Math.max(own.at(seen.sweep().get().first()), other.at(reference.sweep().get().first()));
        double to = Math.min(own.at(seen.sweep().get().last()), other.at(reference.sweep().get().last()));
        double whole = other.at(reference.sweep().get().last()) - other.at(reference.sweep().get().first());
        if (!(to - from >= SHARED_AT_LEAST * whole && to > from)) {
            return Optional.empty();
        }
        double inset = END_SHARE * (to - from);
        Definition.Elapsed shared = new Definition.Elapsed(Quantity.ENGINE_SPEED, from + inset, to - inset);
        return seconds(reference, shared).flatMap(there -> seconds(seen, shared).map(here -> there / here - 1));
    }

    private static Samples speed(Seen seen) {
        return seen.channels().find(Quantity.ENGINE_SPEED).orElseThrow();
    }

    private static Optional<Double> seconds(Seen seen, Definition.Elapsed between) {
        return ElapsedTime.between(Sweeps.cut(seen.channels(), seen.sweep().orElseThrow()), between)
                .match(found -> Optional.of(found.si()), missing -> Optional.empty());
    }

    private static Optional<Double> beyond(double limit, Optional<Double> difference) {
        return difference.filter(off -> Math.abs(off) > limit);
    }

    private static void named(List<Notice> notices, Code code, List<Seen> pulls) {
        if (!pulls.isEmpty()) {
            notices.add(Notice.naming(code, pulls.stream().map(Seen::name).toList()));
        }
    }

    /** Figures: smallest and largest of the pulls that are doubtful. */
    private static void measured(List<Notice> notices, Code code, List<Seen> pulls, Function<Seen, Optional<Double>> figure) {
        List<String> names = new ArrayList<>();
        TreeMap<Double, String> figures = new TreeMap<>();
        for (Seen seen : pulls) {
            figure.apply(seen).ifPresent(value -> {
                names.add(seen.name());
                figures.put(value, seen.name());
            });
        }
        if (!names.isEmpty()) {
            notices.add(new Notice(code, List.of(figures.firstKey(), figures.lastKey()), names));
        }
    }
}

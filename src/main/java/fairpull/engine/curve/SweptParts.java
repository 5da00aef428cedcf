package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A log over time parted so that each part holds one full-throttle sweep. What comes between two rises is parted where the engine has come
 * down: in the first row within {@value #DOWN_SHARE} of the next rise above the lowest speed between them, so that coasting down stays
 * with the sweep before, and idling and the step of the pedal with the sweep behind.
 *
 * <p>Rises are those of {@link Sweeps}. One is a sweep if it takes {@value #SHORTEST_S} s or more (an engine revved without load is
 * faster), rises through {@value Sweeps#SWEEP_SHARE} or more of the largest of these, and takes between {@value #QUICK_SHARE} and
 * {@value #SLOW_TIMES} times the time of a typical one, the lower median of these. Any other rise of {@value #NAMED_SHARE} or more of the
 * largest, such as a blip, driving up to speed or a pull given up early, gets no part and is named. All figures: common practice, no
 * source.
 *
 * @param parts the sweeps with the rows around them, in order
 * @param passedOver the rises that are no sweeps, in order
 */
public record SweptParts(List<Part> parts, List<Span> passedOver) {
    static final double DOWN_SHARE = 0.05;
    static final double SHORTEST_S = 1;
    static final double QUICK_SHARE = 0.25;
    static final double SLOW_TIMES = 4;
    static final double NAMED_SHARE = 0.1;

    public SweptParts {
        parts = List.copyOf(parts);
        passedOver = List.copyOf(passedOver);
    }

    /** Seconds of the log's clock. */
    public record Span(double fromS, double toS) {
    }

    /**
     * One sweep with the rows around it.
     *
     * @param from its first row, counted from 0
     * @param to the row behind its last
     * @param sweep when the sweep begins and ends
     */
    public record Part(int from, int to, Span sweep) {
    }

    /**
     * Parts a log.
     *
     * @param channels the channels of a log in SI, rows in the order in which they were recorded; a row may lack all of its numbers
     * @return its parts; none where it has no time or no engine speed, or where no rise is a sweep
     */
    public static SweptParts of(Channels channels) {
        List<Sweep> rises = channels.find(Quantity.TIME).isPresent() ? Sweeps.of(channels, NAMED_SHARE) : List.of();
        Set<Sweep> sweeps = sweeps(rises, channels);
        if (sweeps.isEmpty()) {
            return new SweptParts(List.of(), List.of());
        }
        Samples time = channels.find(Quantity.TIME).orElseThrow();
        Samples speed = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        List<Part> parts = new ArrayList<>();
        List<Span> passedOver = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < rises.size(); i++) {
            int to = i + 1 < rises.size() ? between(rises.get(i), rises.get(i + 1), speed) : channels.rows();
            Span span = span(rises.get(i), time);
            if (sweeps.contains(rises.get(i))) {
                parts.add(new Part(from, to, span));
            } else {
                passedOver.add(span);
            }
            from = to;
        }
        return new SweptParts(parts, passedOver);
    }

    private static Set<Sweep> sweeps(List<Sweep> rises, Channels channels) {
        List<Sweep> loaded = rises.stream().filter(rise -> seconds(rise, channels) >= SHORTEST_S).toList();
        double largest = loaded.stream().mapToDouble(rise -> Sweeps.height(rise, channels)).max().orElse(0);
        List<Sweep> tall = loaded.stream().filter(rise -> Sweeps.height(rise, channels) >= Sweeps.SWEEP_SHARE * largest).toList();
        double[] times = tall.stream().mapToDouble(rise -> seconds(rise, channels)).sorted().toArray();
        double typical = times.length == 0 ? 0 : times[(times.length - 1) / 2];
        return tall.stream().filter(rise -> seconds(rise, channels) >= QUICK_SHARE * typical
                && seconds(rise, channels) <= SLOW_TIMES * typical).collect(Collectors.toSet());
    }

    private static double seconds(Sweep rise, Channels channels) {
        Span span = span(rise, channels.find(Quantity.TIME).orElseThrow());
        return span.toS() - span.fromS();
    }

    private static Span span(Sweep rise, Samples time) {
        return new Span(time.at(rise.first()), time.at(rise.last()));
    }

    private static int between(Sweep before, Sweep next, Samples speed) {
        OptionalDouble lowest = speed.stream().skip(before.last()).limit(next.first() - before.last() + 1L).filter(Double::isFinite).min();
        double down = lowest.orElseThrow() + DOWN_SHARE * (speed.at(next.last()) - speed.at(next.first()));
        for (int row = before.last() + 1; row < next.first(); row++) {
            if (speed.at(row) <= down) {
                return row;
            }
        }
        return next.first();
    }
}

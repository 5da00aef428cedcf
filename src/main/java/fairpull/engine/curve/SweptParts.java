package fairpull.engine.curve;

import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A log over time parted so that each part holds one full-throttle sweep ({@link Sweeps}). What comes between two sweeps is parted where
 * the engine has come down: in the first row within {@value #DOWN_SHARE} of the next rise above the lowest speed between them, so that
 * coasting down stays with the sweep before, and idling and the step of the pedal with the sweep behind.
 *
 * <p>A rise that takes less than {@value #SHORT_SHARE} of the time of the longest is a blip of the throttle and no pull: it gets no part
 * and is named. All shares: common practice, no source.
 *
 * @param parts the sweeps with the rows around them, in order
 * @param passedOver the rises that are no pulls, in order
 */
public record SweptParts(List<Part> parts, List<Span> passedOver) {
    static final double DOWN_SHARE = 0.05;
    static final double SHORT_SHARE = 0.25;

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
     * @return its parts; none where it has no time or no engine speed, or where no speed rises
     */
    public static SweptParts of(Channels channels) {
        List<Sweep> rises = channels.find(Quantity.TIME).isPresent() ? Sweeps.of(channels) : List.of();
        if (rises.isEmpty()) {
            return new SweptParts(List.of(), List.of());
        }
        Samples time = channels.find(Quantity.TIME).orElseThrow();
        Samples speed = channels.find(Quantity.ENGINE_SPEED).orElseThrow();
        double longest = rises.stream().mapToDouble(rise -> span(rise, time).toS() - span(rise, time).fromS()).max().orElseThrow();
        List<Part> parts = new ArrayList<>();
        List<Span> passedOver = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < rises.size(); i++) {
            int to = i + 1 < rises.size() ? between(rises.get(i), rises.get(i + 1), speed) : channels.rows();
            Span span = span(rises.get(i), time);
            if (span.toS() - span.fromS() < SHORT_SHARE * longest) {
                passedOver.add(span);
            } else {
                parts.add(new Part(from, to, span));
            }
            from = to;
        }
        return new SweptParts(parts, passedOver);
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

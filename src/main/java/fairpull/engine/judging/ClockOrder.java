package fairpull.engine.judging;

import fairpull.domain.finding.PullRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Do the times of the pulls agree with the order in which the installs stand? */
final class ClockOrder {
    private ClockOrder() {
    }

    /** First and last pull of an install, in minutes. */
    private record Span(String session, double first, double last) {
        Span with(double minutes) {
            return new Span(session, Math.min(first, minutes), Math.max(last, minutes));
        }
    }

    /**
     * The installs that began before the one before them in their session was done.
     *
     * @param rows pulls, installs in the order that is claimed; pulls without a time say nothing
     * @return their labels, in order
     */
    static List<String> contradicted(List<PullRow> rows) {
        Map<String, Span> spans = new LinkedHashMap<>();
        for (PullRow row : rows) {
            if (!Double.isNaN(row.minutes())) {
                Span span = spans.getOrDefault(row.install(), new Span(row.session(), row.minutes(), row.minutes()));
                spans.put(row.install(), span.with(row.minutes()));
            }
        }
        List<String> early = new ArrayList<>();
        Map<String, Double> doneAt = new HashMap<>();
        spans.forEach((install, span) -> {
            if (span.first() < doneAt.getOrDefault(span.session(), Double.NEGATIVE_INFINITY)) {
                early.add(install);
            }
            doneAt.merge(span.session(), span.last(), Math::max);
        });
        return early;
    }
}

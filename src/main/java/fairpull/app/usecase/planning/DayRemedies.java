package fairpull.app.usecase.planning;

import fairpull.domain.day.DayFit;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.engine.planning.DayReview;
import fairpull.report.wording.DayWords;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What would make a plan fit its days, each change ready to be taken.
 *
 * @param said what does not fit, and what the changes begin with; nothing where the plan fits
 * @param changes any one of them makes it fit
 */
public record DayRemedies(List<String> said, List<Change> changes) {
    /** A change in words, with what it costs, and the sequence that it makes. */
    public record Change(String words, Sequence sequence) {
    }

    public DayRemedies {
        said = List.copyOf(said);
        changes = List.copyOf(changes);
    }

    /** {@return what would make a plan fit} */
    public static DayRemedies of(Plan plan) {
        DayFit fit = DayReview.of(plan);
        if (fit.fits()) {
            return new DayRemedies(List.of(), List.of());
        }
        List<String> words = DayWords.remedies(plan, fit);
        return new DayRemedies(Stream.concat(DayWords.warnings(fit).stream(), Stream.of(DayWords.remediesHead(fit))).toList(),
                IntStream.range(0, words.size()).mapToObj(place -> new Change(words.get(place), fit.remedies().get(place).sequence()))
                        .toList());
    }
}

package fairpull.report.wording;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.Judgement;
import java.util.List;

/** The further measures, which are reported beside the deciding one and decide nothing. */
public final class SecondaryWords {
    private SecondaryWords() {
    }

    /** {@return each further measure and what was found} */
    public static List<Said> all(Judgement judgement) {
        return judgement.secondary().stream().map(secondary -> new Said(secondary.measure().name(), text(secondary))).toList();
    }

    private static String text(Judgement.Secondary secondary) {
        Finding finding = secondary.finding();
        Numbers numbers = Numbers.of(finding);
        String figures = finding.estimate().map(estimate -> numbers.signed(estimate.change())).orElse("no figure")
                + finding.interval().map(interval -> ", " + Numbers.level(interval.level()) + " interval "
                + CheckWords.ends(numbers, interval)).orElse("");
        String holm = secondary.holmP().isPresent() ? ", " + Numbers.p(secondary.holmP().getAsDouble()) + " after Holm’s adjustment" : "";
        return finding.verdict().words() + ": " + figures + holm;
    }

    /** {@return the sentence under the further measures} */
    public static String caution(Judgement judgement) {
        return "These were named beside the deciding measure and decide nothing. Each verdict and interval is that of the measure alone; "
                + "p-values are adjusted by Holm’s method for " + Numbers.count(judgement.secondary().size(), "further measure") + ".";
    }
}

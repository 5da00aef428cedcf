package fairpull.report.write;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayFit;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Plan;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.report.wording.DayWords;
import fairpull.report.wording.LookWords;
import fairpull.report.wording.PlanWords;
import fairpull.report.wording.ProofWords;
import fairpull.report.wording.SizeWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** What {@code size} and {@code check} print on a terminal. */
public final class TextPlan {
    private TextPlan() {
    }

    /** {@return what a sequence can see, what is to be known of its looks, and when everything happens on its days} */
    public static String size(SizeQuestion question, SizeAnswer answer, List<DayClock> days, String unit) {
        return size(question, answer, unit) + items(LookWords.warnings(answer, Surface.COMMAND_LINE)) + clock(days);
    }

    /** {@return what a sequence can see} */
    public static String size(SizeQuestion question, SizeAnswer answer, String unit) {
        return Lines.wrapped(SizeWords.paragraph(question, answer, unit), "");
    }

    private static String clock(List<DayClock> days) {
        StringBuilder text = new StringBuilder(days.isEmpty() ? "" : "\n");
        days.forEach(day -> text.append(Lines.wrapped(DayWords.day(day), "")));
        return text.toString();
    }

    /** {@return what a simulation of a plan showed} */
    public static String proof(ProofQuestion question, ProofAnswer answer, String order, String unit) {
        StringBuilder text = new StringBuilder(Lines.wrapped(ProofWords.paragraph(question, answer, order, unit), ""));
        List<String> warnings = ProofWords.warnings(question, answer);
        return text.append(items(warnings)).toString();
    }

    /**
     * {@return what is to be said of a seal}
     *
     * @param code its code; empty where there is none
     * @param intactExports how many exports there are, where everything is as the log says it was
     */
    public static String seal(Optional<String> code, OptionalInt intactExports) {
        String intact = intactExports.isPresent()
                ? " Plan, seal, log, mappings and exports (" + intactExports.getAsInt() + ") are as the log says they were."
                : "";
        return code.map(sealed -> "Sealed, code " + sealed + ".").orElse("Not sealed.") + intact;
    }

    /**
     * {@return what is to be said of a plan}
     *
     * @param seal what is to be said of its seal
     * @param size what its sequence can see; empty where it cannot be sized
     * @param fit when everything happens, and what would make it fit
     * @param warnings what a reader must know
     */
    public static String check(Plan plan, String seal, Optional<String> size, DayFit fit, List<String> warnings) {
        StringBuilder text = new StringBuilder(Lines.wrapped(plan.title(), ""));
        if (!plan.remark().isEmpty()) {
            text.append(Lines.wrapped(plan.remark(), ""));
        }
        text.append('\n').append(Lines.wrapped(PlanWords.paragraph(plan), ""));
        text.append(Lines.wrapped(seal, ""));
        size.ifPresent(seen -> text.append('\n').append(seen));
        text.append(clock(fit.days()));
        text.append(items(warnings));
        if (!fit.fits()) {
            text.append('\n').append(DayWords.remediesHead(fit)).append('\n');
            DayWords.remedies(plan, fit).forEach(remedy -> text.append(item(remedy)));
        }
        return text.toString();
    }

    private static String items(List<String> sentences) {
        return (sentences.isEmpty() ? "" : "\n") + sentences.stream().map(TextPlan::item).collect(Collectors.joining());
    }

    private static String item(String sentence) {
        return "- " + Lines.wrapped(sentence, "  ").substring(2);
    }
}

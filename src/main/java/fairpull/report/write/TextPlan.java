package fairpull.report.write;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Plan;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.PlanWords;
import fairpull.report.wording.ProofWords;
import fairpull.report.wording.SizeWords;
import java.util.List;
import java.util.Optional;

/** What {@code size} and {@code check} print on a terminal. */
public final class TextPlan {
    private TextPlan() {
    }

    /** {@return what a sequence can see} */
    public static String size(SizeQuestion question, SizeAnswer answer, String unit) {
        return Lines.wrapped(SizeWords.paragraph(question, answer, unit), "");
    }

    /** {@return what a simulation of a plan showed} */
    public static String proof(ProofQuestion question, ProofAnswer answer, String order, String unit) {
        StringBuilder text = new StringBuilder(Lines.wrapped(ProofWords.paragraph(question, answer, order, unit), ""));
        List<String> warnings = ProofWords.warnings(question, answer);
        text.append(warnings.isEmpty() ? "" : "\n");
        warnings.forEach(warning -> text.append("- ").append(Lines.wrapped(warning, "  ").substring(2)));
        return text.toString();
    }

    /**
     * {@return what is to be said of a plan}
     *
     * @param sealCode the code of its seal; empty where it is not sealed
     * @param size what its sequence can see; empty where it cannot be sized
     */
    public static String check(Plan plan, Optional<String> sealCode, Optional<String> size, List<Notice> notices) {
        StringBuilder text = new StringBuilder(Lines.wrapped(plan.title(), ""));
        if (!plan.remark().isEmpty()) {
            text.append(Lines.wrapped(plan.remark(), ""));
        }
        text.append('\n').append(Lines.wrapped(PlanWords.paragraph(plan), ""));
        text.append(sealCode.map(code -> "Sealed, code " + code + ".").orElse("Not sealed.")).append('\n');
        size.ifPresent(seen -> text.append('\n').append(seen));
        String unit = plan.question().deciding().unit().symbol();
        text.append(notices.isEmpty() ? "" : "\n");
        notices.forEach(notice -> text.append("- ").append(Lines.wrapped(NoticeWords.sentence(notice, unit), "  ").substring(2)));
        return text.toString();
    }
}

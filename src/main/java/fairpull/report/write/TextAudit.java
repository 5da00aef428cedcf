package fairpull.report.write;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Repeat;
import fairpull.report.wording.AuditWords;
import fairpull.report.wording.RepeatWords;
import fairpull.report.wording.Said;
import fairpull.report.wording.UndisclosedWords;
import java.util.List;

/** An audit as plain text for a terminal. */
public final class TextAudit {
    private TextAudit() {
    }

    /** {@return the answer} */
    public static String text(AuditAnswer answer, Repeat repeat) {
        String head = AuditWords.heading(answer);
        StringBuilder text = new StringBuilder(head).append('\n').append("─".repeat(head.length())).append('\n');
        text.append(Lines.wrapped(answer.publication().title() + ". " + answer.publication().remark(), "")).append('\n');
        text.append(Lines.rows(AuditWords.claims(answer))).append('\n').append(Lines.rows(AuditWords.figures(answer)));
        List<Said> checks = AuditWords.checks(answer);
        if (!checks.isEmpty()) {
            text.append('\n').append(Lines.rows(checks));
        }
        UndisclosedWords.heading(answer).ifPresent(heading -> text.append('\n').append(heading).append('\n')
                .append(Lines.wrapped(UndisclosedWords.measure(answer), "")).append(Lines.rows(UndisclosedWords.all(answer))));
        text.append('\n').append(RepeatWords.heading(repeat)).append('\n').append(Lines.wrapped(RepeatWords.paragraph(repeat), ""))
                .append(Lines.rows(RepeatWords.all(repeat)));
        return text.toString();
    }
}

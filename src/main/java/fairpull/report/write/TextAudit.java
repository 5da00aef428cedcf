package fairpull.report.write;

import fairpull.domain.audit.AuditAnswer;
import fairpull.report.wording.AuditWords;
import java.util.List;

/** An audit as plain text for a terminal. */
public final class TextAudit {
    private TextAudit() {
    }

    /** {@return the answer} */
    public static String text(AuditAnswer answer) {
        String head = AuditWords.heading(answer);
        StringBuilder text = new StringBuilder(head).append('\n').append("─".repeat(head.length())).append('\n');
        text.append(Lines.wrapped(answer.publication().title() + ". " + answer.publication().remark(), "")).append('\n');
        text.append(Lines.rows(AuditWords.claims(answer))).append('\n').append(Lines.rows(AuditWords.figures(answer)));
        List<String> missing = AuditWords.notDisclosed(answer);
        if (!missing.isEmpty()) {
            text.append('\n').append(Lines.wrapped("Not disclosed: " + String.join("; ", missing) + ".", ""));
        }
        return text.toString();
    }
}

package fairpull.report.wording;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Grade;
import java.util.List;

/**
 * What published figures can and cannot show: the words of an audit, each subject in a class of its own. An audit speaks of figures, never
 * of whoever published them.
 */
public final class AuditWords {
    private AuditWords() {
    }

    /** {@return how the claims stand, in a few words} */
    public static String heading(AuditAnswer answer) {
        return AuditClaimWords.heading(answer);
    }

    /** {@return a grade in words} */
    public static String grade(Grade grade) {
        return AuditClaimWords.grade(grade);
    }

    /** {@return each claim with its grade, the reason and the figures behind it} */
    public static List<Said> claims(AuditAnswer answer) {
        return AuditClaimWords.claims(answer);
    }

    /** {@return why a claim stands as it does, with the figures behind it} */
    public static String reason(AuditAnswer answer, AuditAnswer.OfClaim claim) {
        return AuditClaimWords.reason(answer, claim);
    }

    /** {@return what each figure can show} */
    public static List<Said> figures(AuditAnswer answer) {
        return AuditFigureWords.figures(answer);
    }

    /** {@return what figures, curves and procedure show against each other: each question that was raised, then those that were not} */
    public static List<Said> checks(AuditAnswer answer) {
        return AuditCheckWords.checks(answer);
    }

    /** {@return how often an unchanged car does something, never told as never} */
    public static String chance(double share) {
        return AuditFigureWords.chance(share);
    }
}

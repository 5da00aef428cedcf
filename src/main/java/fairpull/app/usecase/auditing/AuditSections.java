package fairpull.app.usecase.auditing;

import fairpull.app.usecase.judging.FindingView;
import fairpull.app.usecase.judging.FindingView.Section;
import fairpull.domain.audit.AuditAnswer;
import fairpull.report.write.AuditReport;
import java.util.List;

/** All that an audit says, as the window shows it: the cards of its report, as data. */
public final class AuditSections {
    private AuditSections() {
    }

    /** {@return the cards of an audit, in the order in which they are read} */
    public static List<Section> of(AuditAnswer answer) {
        return AuditReport.cards(answer, AuditPublication.repeat(answer)).stream().map(FindingView::section).toList();
    }
}

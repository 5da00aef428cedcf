package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.domain.plan.Plan;
import fairpull.ui.theme.Words;

/** What stands over a test or an audit: what it is called, and in what state it is. */
final class Titles {
    private Titles() {
    }

    /** {@return the line under the title} */
    static String subtitle(Document document) {
        Plan plan = document.plan();
        String state = document.isAmending() ? Words.of("state.amending")
                : document.sealCode().map(code -> Words.of("state.sealed", code)).orElseGet(() -> Words.of("state.open"));
        return Words.of("subtitle", state, plan.rig().name(), plan.question().deciding().name());
    }

    /** {@return the title of the test, which names its parts: blind eyes do not see it} */
    static String title(Document document, boolean blind) {
        return blind ? Words.of("blind.title") : document.plan().title();
    }

    /** {@return the title of the window, with a mark where edits are not saved} */
    static String window(Document document, boolean blind) {
        return (document.isChanged() && !document.isUntouched() ? "• " : "") + title(document, blind) + " – Fairpull";
    }

    /** {@return what a publication is called} */
    static String title(AuditDocument audit) {
        return audit.draft().title().isBlank() ? Words.of("audit.untitled") : audit.draft().title();
    }

    /** {@return the line under the title of a publication} */
    static String subtitle(AuditDocument audit) {
        String where = audit.draft().source().isBlank() ? Words.of("audit.noSource") : audit.draft().source();
        return Words.of("audit.subtitle", where);
    }

    /** {@return the title of the window of an audit, with a mark where edits are not saved} */
    static String window(AuditDocument audit) {
        return (audit.isChanged() ? "• " : "") + title(audit) + " – Fairpull";
    }
}

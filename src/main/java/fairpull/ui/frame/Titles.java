package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.domain.plan.Plan;
import fairpull.ui.theme.Words;

/** What stands over a test: its state, its rig, what decides. */
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
}

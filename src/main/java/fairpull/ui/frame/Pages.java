package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.ui.page.Desk;
import fairpull.ui.page.MadeWhenShown;
import fairpull.ui.page.Page;
import fairpull.ui.page.finding.FindingPage;
import fairpull.ui.page.limits.LimitsPage;
import fairpull.ui.page.pulls.PullsPage;
import fairpull.ui.page.question.QuestionPage;
import fairpull.ui.page.rig.RigPage;
import fairpull.ui.page.run.RunPage;
import fairpull.ui.page.sequence.SequencePage;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The pages of a test, in the order of the work. */
public final class Pages {
    private Pages() {
    }

    /** {@return the pages on a desk} */
    public static List<Page> of(Desk desk) {
        Function<Document, Optional<String>> pulls = document -> PullsPage.notReady(document).or(desk::blinded);
        return List.of(new QuestionPage(desk), new MadeWhenShown("page.rig", desk, RigPage::new),
                new MadeWhenShown("page.sequence", desk, SequencePage::new), new MadeWhenShown("page.limits", desk, LimitsPage::new),
                new MadeWhenShown("page.run", desk, RunPage::new, RunPage::whyNotYet),
                new MadeWhenShown("page.pulls", desk, PullsPage::new, pulls), new FindingPage(desk));
    }
}

package fairpull.report.write;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.Judgement;
import java.util.List;
import java.util.stream.Stream;

/** All that a report says of a test, card by card: what was found first, then the data. Page, paper and window show the same ones. */
public final class ReportCards {
    private ReportCards() {
    }

    /** {@return the cards of a judgement, with what to do on a surface} */
    public static List<Card> of(Judgement judgement, Surface surface) {
        return Stream.concat(FindingCards.of(judgement, surface).stream(), DataCards.of(judgement).stream()).toList();
    }
}

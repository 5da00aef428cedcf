package fairpull.report.wording;

import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.Oddity;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.plan.Part;
import fairpull.domain.unit.Units;
import java.util.Arrays;

/** What is to be asked where two things that were disclosed hardly go together. */
final class OddityWords {
    private OddityWords() {
    }

    /** {@return the question to a finding} */
    static String text(Found found, Publication publication) {
        String order = publication.procedure().returning().order().map(RunOrder::letters).orElse("");
        String side = found.side() == Side.BEFORE ? "before" : "after";
        return switch (oddity(found)) {
            case STRAPPED_OVERNIGHT -> "the figures are of different days, and the car stayed strapped down between them: did it stand on "
                    + "the rig over night?";
            case ORDER_OF_ONE_DAY -> "the figures are of different days, and the order " + order + " names no change of day: where did the "
                    + "day change?";
            case SINGLE_OF_SEVERAL_INSTALLS -> "the order " + order + " has " + installs(found, publication) + " installs of the state "
                    + side + ", and a single pull of them is quoted: which one, and was that settled before the test?";
            case BEST_OF_ONE -> "the figure " + side + " is the best of one pull: were more run?";
            case SPEED_NOT_SWEPT -> found.about() + " stands at "
                    + AuditFigureWords.printed(publication.figure(found.about()).at().orElseThrow())
                    + ", and the sweep runs" + swept(publication) + ": was more of it run?";
            case BAROMETER_WITHOUT_CORRECTION -> "the figures are as measured, and a barometer is named: was something corrected for air "
                    + "after all?";
        };
    }

    private static Oddity oddity(Found found) {
        return Arrays.stream(Oddity.values()).filter(oddity -> oddity.id().equals(found.symbols())).findFirst().orElseThrow();
    }

    private static int installs(Found found, Publication publication) {
        Part part = found.side() == Side.BEFORE ? Part.A : Part.B;
        return publication.procedure().returning().order().map(order -> order.installs(part)).orElse(0);
    }

    private static String swept(Publication publication) {
        return publication.procedure().sweeping().speeds().map(range -> " from "
                + Numbers.given(Math.rint(Units.RPM.fromSi(range.lowRadPerS()))) + " to "
                + Numbers.given(Math.rint(Units.RPM.fromSi(range.highRadPerS())), "rpm")).orElse("");
    }
}

package fairpull.report.wording;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.PullCorrection;

/** What was done to the values of a test to bring them to the plan's standard. */
public final class CorrectionWords {
    private CorrectionWords() {
    }

    /** {@return the correction of one pull as a cell: its factor, and how old the oldest reading is where one was carried} */
    public static String cell(PullCorrection correction) {
        return factor(correction.factor())
                + correction.carried().map(age -> " (air noted " + minutes(age.minutes()) + " before)").orElse("");
    }

    /** {@return a factor as printed} */
    public static String factor(double factor) {
        return AirWords.fixed(factor, 4, "");
    }

    static String sentence(Notice notice) {
        return switch (notice.code()) {
            case CORRECTED_HERE -> "Brought to the plan’s standard by the air at each pull: " + NoticeWords.names(notice)
                    + " (multiplied by " + factor(notice, 0) + " to " + factor(notice, 1) + "); the exports are kept as they came.";
            case AIR_CARRIED -> carried(notice);
            case AIR_CARRIED_LONG -> "Barometer or humidity had been noted more than " + minutes(notice.figures().get(0)) + " before "
                    + NoticeWords.names(notice) + " (a limit of common practice, no source); read both anew at each install.";
            case FACTOR_SPREAD -> "The correction factor ran from " + factor(notice, 0) + " to " + factor(notice, 1) + " under A and from "
                    + factor(notice, 2) + " to " + factor(notice, 3) + " under B; only what differs between them bears on the comparison.";
            case FACTOR_STEP -> "The correction factor steps by up to " + AirWords.percent(notice.figures().get(0))
                    + " from the pull before at " + NoticeWords.names(notice) + "; look whether the air changed or a sensor did.";
            case FACTOR_OUTSIDE -> "The correction factor is outside " + AirWords.fixed(notice.figures().get(0), 2, "") + " to "
                    + AirWords.fixed(notice.figures().get(1), 2, "") + " at " + NoticeWords.names(notice)
                    + "; so much correction cannot be trusted, so read the uncorrected figures beside it.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about a correction");
        };
    }

    private static String carried(Notice notice) {
        long pulls = Math.round(notice.figures().get(0));
        long planned = Math.round(notice.figures().get(2));
        return (pulls == 1 ? "1 pull was" : pulls + " pulls were") + " corrected with a barometer or humidity noted at an earlier pull of "
                + "the session, the oldest " + minutes(notice.figures().get(1)) + " before"
                + (planned == 0 ? "" : planned == pulls ? " by the planned clock" : " (" + planned + " by the planned clock)")
                + "; a reading holds until the next one.";
    }

    private static String factor(Notice notice, int place) {
        return factor(notice.figures().get(place));
    }

    private static String minutes(double minutes) {
        return Math.round(minutes) + String.valueOf(Numbers.THIN) + "min";
    }
}

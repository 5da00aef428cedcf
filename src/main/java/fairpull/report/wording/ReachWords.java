package fairpull.report.wording;

import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchSpace;
import fairpull.domain.search.Shortfall;
import fairpull.domain.search.Shortfall.Limit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What would bring a gain within reach that no day within the limits finds. */
final class ReachWords {
    private ReachWords() {
    }

    static String remedy(Shortfall shortfall, SearchQuestion question, String unit) {
        if (shortfall.outOfReachBelow() > question.asked().gain()) {
            return "The gain asked for is out of reach at this scatter: " + SearchSpace.MOST_INSTALLS + " installs with pulls without end, "
                    + "and the scatter known, find no less than " + SizeWords.detectable(shortfall.outOfReachBelow(), unit)
                    + ". Less refit scatter would help, or several sessions.";
        }
        List<String> remedies = Stream.of(Limit.values()).filter(shortfall::binds).map(ReachWords::words).collect(Collectors.toList());
        String share = Numbers.percent(Shortfall.WORTH_NAMING);
        return remedies.isEmpty() ? "No limit, moved alone, would lower it by " + share + "; less scatter would."
                : "What would lower it by " + share + " or more" + (remedies.size() > 1 ? ", each by itself: " : ": ")
                + String.join("; ", remedies) + ".";
    }

    private static String words(Limit limit) {
        return switch (limit) {
            case HOURS -> "more hours";
            case MONEY -> "more money";
            case INSTALLS -> "more installs (--max-installs)";
            case SWAPS -> "more swaps (--max-swaps)";
            case PULLS -> "more pulls per install (--pulls)";
            case RECORD -> "a longer record of refit scatter (--refit-df)";
        };
    }
}

package fairpull.report.wording;

import fairpull.domain.search.DayCaution;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a day that a search found cannot guard against, and which days are not worth a line of the table. */
public final class SearchCautionWords {
    private SearchCautionWords() {
    }

    /** {@return the cautions of some days, each once, in a fixed order} */
    public static List<DayCaution> of(List<SearchRow> rows) {
        return rows.stream().flatMap(row -> row.cautions().stream()).distinct().sorted().toList();
    }

    /** {@return the sentence of a caution} */
    public static String sentence(DayCaution caution, SearchQuestion question) {
        return switch (caution) {
            case NO_RETURN_TO_A -> "no part comes back after the other one, so nothing shows what else moved in the meantime.";
            case SINGLE_B_ONE_WAY -> "B is strapped down once, so the data do not show how much that strap-down added; "
                    + (question.asked().refitDegreesOfFreedom() > 0 ? "the record of refit scatter stands for it."
                            : "only the scatter of the A installs stands for it, as no record of refit scatter was given (--refit-df).");
            case DRIFT_TOLD_BY_PULLS_ALONE -> "only the pulls within installs tell the change from the drift, which must run alike within "
                    + "an install and across a swap; there is no limit to print.";
            case LINEAR_DRIFT_LEFT -> "a straight drift passes in part for a change, as the first drift column says.";
            case CURVATURE_LEFT -> "a drift that bends, as a car does that warms up quickly and then slowly, passes in part for a change, "
                    + "as the second drift column says; no straight line takes that out.";
        };
    }

    /** {@return how a row names its cautions: their letters} */
    public static String letters(SearchRow row, List<DayCaution> all) {
        return row.cautions().stream().map(caution -> letter(caution, all)).sorted().collect(Collectors.joining());
    }

    /** {@return what the letters mean, a sentence each} */
    public static List<String> key(List<DayCaution> all, SearchQuestion question) {
        return all.stream().map(caution -> letter(caution, all) + ": " + sentence(caution, question)).toList();
    }

    private static String letter(DayCaution caution, List<DayCaution> all) {
        return String.valueOf((char) ('a' + all.indexOf(caution)));
    }

    /** {@return how many days are not listed, and why; nothing where all are} */
    public static List<String> folded(SearchQuestion question, SearchAnswer answer, String unit) {
        double asked = question.asked().gain();
        List<SearchRow> hopeless = answer.front().stream().filter(row -> row.isHopeless(asked)).toList();
        if (hopeless.isEmpty()) {
            return List.of();
        }
        List<String> reasons = new ArrayList<>();
        long seldom = hopeless.stream().filter(row -> row.seen().power().orElseThrow() < SearchRow.HOPELESS_POWER).count();
        long coarse = hopeless.stream().filter(row -> row.detectableGain() > SearchRow.HOPELESS_TIMES * asked).count();
        reason(reasons, seldom, hopeless.size(), "would find the " + Numbers.given(asked, unit) + " asked for with a chance below "
                + Numbers.percent(SearchRow.HOPELESS_POWER));
        reason(reasons, coarse, hopeless.size(), "could find nothing below " + Numbers.given(SearchRow.HOPELESS_TIMES * asked, unit)
                + ", " + Numbers.given(SearchRow.HOPELESS_TIMES) + " times the gain asked for");
        boolean all = hopeless.size() == answer.front().size();
        String which = all ? "All days are hopeless, and only the best is listed: " : Numbers.count(hopeless.size(), "shorter day")
                + (hopeless.size() == 1 ? " is hopeless and not listed: " : " are hopeless and not listed: ");
        return List.of(which + String.join("; ", reasons) + ".");
    }

    private static void reason(List<String> reasons, long count, int all, String what) {
        if (count > 0) {
            reasons.add((count < all ? count + " of them" : all == 1 ? "it" : reasons.isEmpty() ? "each" : "all") + " " + what);
        }
    }
}

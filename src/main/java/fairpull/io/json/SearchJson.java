package fairpull.io.json;

import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import java.util.List;

/** The days worth choosing, as JSON; the figures of a day are named as {@code size} names them. */
public final class SearchJson {
    private SearchJson() {
    }

    /** {@return the document; cost is null where nothing costs anything} */
    public static String document(SearchQuestion question, SearchAnswer answer, String unit, List<String> warnings) {
        return Tree.empty().text("unit", unit.isBlank() ? null : unit)
                .whole("daysTried", answer.daysTried())
                .trees("front", answer.front(), (tree, row) -> row(tree, row, !question.costs().areNone()))
                .texts("warnings", warnings).document();
    }

    private static void row(Tree tree, SearchRow row, boolean costs) {
        tree.text("sequence", row.order()).whole("pulls", row.pulls()).whole("warmUps", row.warmUps())
                .number("minutes", row.seen().minutes())
                .number("detectableGain", row.seen().detectableGain())
                .number("power", row.seen().power())
                .number("standardError", row.seen().standardError())
                .number("degreesOfFreedom", row.seen().degreesOfFreedom())
                .number("limit", row.seen().limit())
                .number("leastRandomisationP", row.seen().leastRandomisationP())
                .number("linearDriftLeft", row.linearDriftLeft())
                .number("quadraticDriftLeft", row.quadraticDriftLeft())
                .number("cost", costs ? row.cost() : Double.NaN);
    }
}

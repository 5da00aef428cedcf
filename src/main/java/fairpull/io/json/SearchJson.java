package fairpull.io.json;

import fairpull.domain.search.DayCaution;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The days worth choosing, as JSON; the figures of a day are named as {@code size} names them. */
public final class SearchJson {
    private SearchJson() {
    }

    /** {@return the document; cost is null where nothing costs anything} */
    public static String document(SearchQuestion question, SearchAnswer answer, String unit, List<String> warnings,
            Function<DayCaution, String> sentence) {
        return Tree.empty().text("unit", unit.isBlank() ? null : unit)
                .whole("daysTried", answer.daysTried())
                .trees("front", answer.front(), (tree, row) -> row(tree, row, question))
                .trees("cautions", answer.front().stream().flatMap(row -> row.cautions().stream()).distinct().sorted().toList(),
                        (tree, caution) -> tree.text("code", code(caution)).text("sentence", sentence.apply(caution)))
                .texts("warnings", warnings).document();
    }

    private static void row(Tree tree, SearchRow row, SearchQuestion question) {
        tree.text("sequence", row.order()).whole("pulls", row.pulls()).whole("warmUps", row.warmUps())
                .number("minutes", row.seen().minutes())
                .number("detectableGain", row.seen().detectableGain())
                .number("power", row.seen().power())
                .number("standardError", row.seen().standardError())
                .number("degreesOfFreedom", row.seen().degreesOfFreedom())
                .number("limit", row.seen().limit())
                .number("leastRandomisationP", row.leastRandomisationP(question.space()))
                .number("linearDriftLeft", row.linearDriftLeft())
                .number("quadraticDriftLeft", row.quadraticDriftLeft())
                .flag("hopeless", row.isHopeless(question.asked().gain()))
                .texts("cautions", row.cautions().stream().map(SearchJson::code).toList())
                .number("cost", !question.costs().areNone() ? row.cost() : Double.NaN);
    }

    private static String code(DayCaution caution) {
        return caution.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

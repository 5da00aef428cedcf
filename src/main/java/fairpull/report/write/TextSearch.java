package fairpull.report.write;

import fairpull.domain.search.DayCaution;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.SearchCautionWords;
import fairpull.report.wording.SearchWords;
import java.util.List;
import java.util.Locale;

/** What {@code search} prints on a terminal: a table, and under it what each step up buys. */
public final class TextSearch {
    private static final String ROW = "%2s  %-10s %5s %4s  %-11s %6s %6s %6s %5s %6s %6s %6s %s %s";
    private static final String STEP = " ".repeat(10);

    private final SearchQuestion question;
    private final SearchAnswer answer;
    private final String unit;
    private final List<SearchRow> shown;
    private final List<DayCaution> cautions;
    private final StringBuilder text = new StringBuilder();

    private TextSearch(SearchQuestion question, SearchAnswer answer, String unit) {
        this.question = question;
        this.answer = answer;
        this.unit = unit;
        shown = SearchWords.shown(question, answer, unit);
        cautions = SearchCautionWords.of(shown);
    }

    /** {@return the whole answer; figures are in {@code unit}} */
    public static String text(SearchQuestion question, SearchAnswer answer, String unit) {
        TextSearch search = new TextSearch(question, answer, unit);
        search.sentence(SearchWords.opening(question, answer, search.shown.size()));
        search.table();
        search.text.append('\n');
        search.sentence(SearchWords.reached(question, answer, search.shown, unit));
        SearchCautionWords.folded(question, answer, unit).forEach(search::sentence);
        search.steps();
        search.notes();
        return search.text.toString();
    }

    private void sentence(String sentence) {
        text.append(Lines.wrapped(sentence, ""));
    }

    private void table() {
        String cost = question.costs().areNone() ? "" : "   cost";
        text.append('\n');
        row("", "order", "pulls", "warm", "day takes", "finds", "limit", "s.e.", "df", "drift", "drift", "least", cost,
                cautions.isEmpty() ? "" : "mind");
        row("", "", "", "up", "", unit, unit, unit, "", "1/h", "1/h²", "p", "", "");
        for (int i = 0; i < shown.size(); i++) {
            row(i + 1, shown.get(i));
        }
    }

    private void row(int number, SearchRow row) {
        double standardError = row.seen().standardError().orElseThrow();
        row(number, row.order(), row.pulls(), row.warmUps(), Numbers.duration(row.seen().minutes()), resolved(row.detectableGain()),
                row.seen().limit().isPresent() ? resolved(row.seen().limit().getAsDouble()) : "–", resolved(standardError),
                Numbers.degreesOfFreedom(row.seen().degreesOfFreedom().orElseThrow()), drift(row.linearDriftLeft()),
                drift(row.quadraticDriftLeft()), SearchWords.leastP(row, question.space()),
                question.costs().areNone() ? "" : String.format(Locale.ROOT, "%7s", SearchWords.money(row.cost())),
                SearchCautionWords.letters(row, cautions));
    }

    private void row(Object... cells) {
        text.append(String.format(Locale.ROOT, ROW, cells).stripTrailing()).append('\n');
    }

    private static String resolved(double figure) {
        return Numbers.resolving(figure, "").bare(figure);
    }

    private static String drift(double left) {
        return left == 0 ? "0" : resolved(left);
    }

    private void steps() {
        text.append(shown.size() > 1 ? "\nWhat each step up buys:\n" : "");
        for (int i = 1; i < shown.size(); i++) {
            String bought = SearchWords.step(shown.get(i - 1), shown.get(i), question.costs(), unit);
            text.append(String.format(Locale.ROOT, "%2d → %-5d", i, i + 1))
                    .append(Lines.wrapped(bought, STEP).substring(STEP.length()));
        }
    }

    private void notes() {
        text.append('\n');
        sentence(SearchWords.legend(question));
        SearchCautionWords.key(cautions, question)
                .forEach(caution -> text.append(Lines.wrapped("mind " + caution, " ".repeat(8)).substring(8)));
        if (!question.costs().areNone()) {
            sentence(SearchWords.cost(question.costs()));
        }
        SearchWords.warnings(question)
                .forEach(warning -> text.append("- ").append(Lines.wrapped(warning, "  ").substring(2)));
    }
}

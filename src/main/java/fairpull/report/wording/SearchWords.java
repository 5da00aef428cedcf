package fairpull.report.wording;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import fairpull.domain.search.Costs;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The days worth choosing, as a table of at most 100 columns, with what each step up buys. */
public final class SearchWords {
    private static final String ROW = "%2s  %-10s %5s %4s  %-11s %7s %7s %7s %5s %6s %6s %6s %7s";
    private static final String STEP = " ".repeat(10);
    private static final int PAGE = 100;

    private final SearchQuestion question;
    private final SearchAnswer answer;
    private final String unit;
    private final List<SearchRow> shown;

    private SearchWords(SearchQuestion question, SearchAnswer answer, String unit) {
        this.question = question;
        this.answer = answer;
        this.unit = unit;
        shown = shown(answer.front(), unit);
    }

    /** {@return the whole answer: how many were tried, the table, its steps, what its columns mean and what is lost} */
    public static String text(SearchQuestion question, SearchAnswer answer, String unit) {
        SearchWords words = new SearchWords(question, answer, unit);
        List<String> lines = new ArrayList<>();
        lines.addAll(wrapped(words.opening()));
        lines.add("");
        lines.addAll(words.table());
        lines.add("");
        lines.addAll(wrapped(words.reached()));
        if (words.shown.size() > 1) {
            lines.add("");
            lines.add("What each step up buys:");
            lines.addAll(words.steps());
        }
        lines.add("");
        words.legend().forEach(sentence -> lines.addAll(wrapped(sentence)));
        warnings(question, answer).forEach(warning -> lines.addAll(wrapped("- " + warning)));
        return String.join("\n", lines) + "\n";
    }

    /** A day that finds no smaller a gain as printed than the one before it is left to the program-readable answer. */
    private static List<SearchRow> shown(List<SearchRow> front, String unit) {
        List<SearchRow> shown = new ArrayList<>();
        String last = "";
        for (SearchRow row : front) {
            String found = SizeWords.detectable(row.detectableGain(), unit);
            if (!found.equals(last)) {
                shown.add(row);
            }
            last = found;
        }
        return shown;
    }

    private String opening() {
        SizeQuestion asked = question.asked();
        String money = question.money().isPresent() ? " and " + Numbers.given(question.money().getAsDouble()) : "";
        String rest = answer.front().size() > shown.size()
                ? " (" + shown.size() + " shown: the others find the same gain to the digits printed)" : "";
        return "Of " + answer.daysTried() + " days, " + answer.front().size() + rest + " are worth choosing among within "
                + Numbers.duration(question.minutes()) + money + ": no other is as short and finds a smaller gain with a chance of "
                + Numbers.percent(asked.powerWanted()) + " (error rate " + Numbers.percent(asked.errorRate()) + ", "
                + (asked.sides() == Sides.TWO ? "two-sided" : "one-sided") + "; drift modelled: "
                + asked.drift().name().toLowerCase(Locale.ROOT) + ").";
    }

    private List<String> table() {
        List<String> lines = new ArrayList<>();
        String cost = question.costs().areNone() ? "" : "cost";
        lines.add(line("", "order", "pulls", "warm", "day takes", "finds", "limit", "s.e.", "df", "drift", "drift", "least", cost));
        lines.add(line("", "", "", "up", "", unit, unit, unit, "", "1/h", "1/h²", "p", ""));
        for (int i = 0; i < shown.size(); i++) {
            lines.add(line(i + 1, shown.get(i)));
        }
        return lines;
    }

    private String line(int number, SearchRow row) {
        double standardError = row.seen().standardError().orElseThrow();
        String cost = question.costs().areNone() ? "" : money(row.cost());
        return line(String.valueOf(number), row.order(), String.valueOf(row.pulls()), String.valueOf(row.warmUps()),
                Numbers.duration(row.seen().minutes()), bare(row.detectableGain()),
                row.seen().limit().isPresent() ? bare(row.seen().limit().getAsDouble()) : "–",
                Numbers.resolving(standardError, "").bare(standardError),
                Numbers.degreesOfFreedom(row.seen().degreesOfFreedom().orElseThrow()), drift(row.linearDriftLeft()),
                drift(row.quadraticDriftLeft()), Numbers.p(row.seen().leastRandomisationP()).replaceAll("^p\\W+", ""), cost);
    }

    private static String line(Object... cells) {
        return String.format(Locale.ROOT, ROW, cells).stripTrailing();
    }

    private static String bare(double gain) {
        return Numbers.resolving(gain, "").bare(gain);
    }

    private static String drift(double left) {
        return left == 0 ? "0" : Numbers.resolving(left, "").bare(left);
    }

    private static String money(double cost) {
        return Numbers.given(Math.round(cost * 100) / 100.0);
    }

    private String reached() {
        String asked = Numbers.given(question.asked().gain(), unit);
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).detectableGain() <= question.asked().gain()) {
                return "From day " + (i + 1) + " on, the gain asked for, " + asked + ", is found with that chance.";
            }
        }
        SearchRow best = answer.front().get(answer.front().size() - 1);
        return "No day within the limits finds the gain asked for, " + asked + ", with that chance: " + SizeWords.detectable(
                best.detectableGain(), unit) + " is the smallest. More hours, or a record of refit scatter, would help.";
    }

    private List<String> steps() {
        List<String> lines = new ArrayList<>();
        for (int i = 1; i < shown.size(); i++) {
            SearchRow before = shown.get(i - 1);
            SearchRow after = shown.get(i);
            String cost = question.costs().areNone() ? "" : " and " + money(after.cost() - before.cost());
            String bought = Numbers.duration(after.seen().minutes() - before.seen().minutes()) + cost + " more, for "
                    + difference(before, after) + ": finds " + SizeWords.detectable(after.detectableGain(), unit) + " instead of "
                    + bare(before.detectableGain()) + ".";
            List<String> wrapped = wrapped(bought, PAGE - STEP.length());
            lines.add(String.format(Locale.ROOT, "%2d → %-5d", i, i + 1) + wrapped.get(0));
            wrapped.stream().skip(1).forEach(line -> lines.add(STEP + line));
        }
        return lines;
    }

    private static String difference(SearchRow before, SearchRow after) {
        List<String> changes = new ArrayList<>();
        change(changes, before.order().length(), after.order().length(), "install", "");
        change(changes, before.pulls(), after.pulls(), "pull", " an install");
        change(changes, before.warmUps(), after.warmUps(), "warm-up", " an install");
        return changes.isEmpty() ? "another order" : String.join(" and ", changes);
    }

    private static void change(List<String> changes, int before, int after, String noun, String where) {
        if (after != before) {
            changes.add(FindingWords.count(Math.abs(after - before), (after > before ? "more " : "fewer ") + noun) + where);
        }
    }

    private List<String> legend() {
        List<String> sentences = new ArrayList<>();
        sentences.add("finds: smallest gain found with the chance wanted. limit: what more pulls cannot bring it below. s.e., df: standard "
                + "error and degrees of freedom of the change. drift: what a drift of 1 per hour, and one of 1 per hour² from the middle "
                + "of the day, passes for in the change" + (question.asked().drift() == Drift.NONE ? " (no drift is modelled)" : "")
                + ". least p: of a randomisation test, if the order is drawn.");
        if (!question.costs().areNone()) {
            sentences.add(cost(question.costs()));
        }
        return sentences;
    }

    private static String cost(Costs costs) {
        List<String> terms = new ArrayList<>();
        term(terms, "hours × ", costs.perHour());
        term(terms, "pulls, warm-ups too, × ", costs.perPull());
        term(terms, "swaps × ", costs.perSwap());
        term(terms, "", costs.setUp());
        return "cost: " + String.join(" + ", terms) + "; every install after the first is a swap, in time and in money, also where the "
                + "same part is fitted again.";
    }

    private static void term(List<String> terms, String what, double price) {
        if (price > 0) {
            terms.add(what + Numbers.given(price));
        }
    }

    /** {@return what must be known of the answer} */
    public static List<String> warnings(SearchQuestion question, SearchAnswer answer) {
        List<String> warnings = new ArrayList<>();
        if (question.space().warmUps().least() < question.space().warmUps().most()) {
            warnings.add("Warm-up pulls take time and add nothing to these figures, so the fewest allowed are taken; how many the car "
                    + "needs is a matter of heat.");
        }
        if (question.space().oneWay()) {
            warnings.add("B cannot come off again, so every B stands after every A: whatever moved with the clock counts as the change"
                    + (question.asked().drift() == Drift.NONE ? ", as the drift column says" : " unless it is of the kind modelled")
                    + ", and there is no return to A to show it.");
            warnings.add("B stays on when the car is strapped down again, so the B installs do not show how much fitting B itself scatters"
                    + (question.asked().refitDegreesOfFreedom() > 0 ? "; the record of refit scatter must stand for it."
                            : ": that needs a record of refit scatter (--refit-df)."));
        }
        if (answer.front().stream().anyMatch(row -> row.seen().limit().equals(OptionalDouble.empty()))) {
            warnings.add("Where there is no limit, only the pulls within installs tell the change from the drift: it must run alike within "
                    + "an install and across a swap.");
        }
        return warnings;
    }

    private static List<String> wrapped(String sentence) {
        return wrapped(sentence, PAGE);
    }

    private static List<String> wrapped(String sentence, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split(" ")) {
            if (line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}

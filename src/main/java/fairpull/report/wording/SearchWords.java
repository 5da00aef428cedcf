package fairpull.report.wording;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import fairpull.domain.search.Costs;
import fairpull.domain.search.Range;
import fairpull.domain.search.SearchAnswer;
import fairpull.domain.search.SearchQuestion;
import fairpull.domain.search.SearchRow;
import fairpull.domain.search.SearchSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The days worth choosing among: what was tried, what each step up buys, what the figures mean and what is lost. */
public final class SearchWords {
    private SearchWords() {
    }

    /**
     * {@return the days to print: hopeless ones are left out, and those that find no smaller a gain, as printed, than the one before; of
     *     nothing but hopeless ones the best stays}
     *
     * <p>Gains are compared as printed, so that a reader never pays hours for a step that the table cannot show; the front has them all.
     */
    public static List<SearchRow> shown(SearchQuestion question, SearchAnswer answer, String unit) {
        List<SearchRow> hopeful = answer.front().stream().filter(row -> !row.isHopeless(question.asked().gain())).toList();
        List<SearchRow> shown = new ArrayList<>();
        String last = "";
        for (SearchRow row : hopeful.isEmpty() ? answer.front().subList(answer.front().size() - 1, answer.front().size()) : hopeful) {
            String found = SizeWords.detectable(row.detectableGain(), unit);
            if (!found.equals(last)) {
                shown.add(row);
            }
            last = found;
        }
        return shown;
    }

    /** {@return how many days were tried, and in what sense those listed are the best} */
    public static String opening(SearchQuestion question, SearchAnswer answer, int shown) {
        SizeQuestion asked = question.asked();
        String money = question.money().isPresent() ? " and " + Numbers.given(question.money().getAsDouble()) : "";
        boolean alike = answer.front().stream().filter(row -> !row.isHopeless(asked.gain())).count() > shown;
        String rest = answer.front().size() == shown ? ""
                : " (" + shown + " listed" + (alike ? ", leaving out those that find the same gain to the digits printed)" : ")");
        return "Of " + answer.daysTried() + " days, " + answer.front().size() + rest + " are worth choosing among within "
                + Numbers.duration(question.minutes()) + money + ": no other is as short and finds a smaller gain with a chance of "
                + Numbers.percent(asked.powerWanted()) + " (error rate " + Numbers.percent(asked.errorRate()) + ", "
                + (asked.sides() == Sides.TWO ? "two-sided" : "one-sided") + "; drift modelled: "
                + asked.drift().name().toLowerCase(Locale.ROOT) + ").";
    }

    /** {@return from which of the days shown on the gain asked for is found} */
    public static String reached(SearchQuestion question, SearchAnswer answer, List<SearchRow> shown, String unit) {
        String asked = Numbers.given(question.asked().gain(), unit);
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).detectableGain() <= question.asked().gain()) {
                return "From day " + (i + 1) + " on, the gain asked for, " + asked + ", is found with that chance.";
            }
        }
        SearchRow best = answer.front().get(answer.front().size() - 1);
        return "No day within the limits finds the gain asked for, " + asked + ", with that chance: " + SizeWords.detectable(
                best.detectableGain(), unit) + " is the smallest. " + answer.shortfall().map(shortfall -> ReachWords.remedy(shortfall,
                question, unit)).orElse("");
    }

    /** {@return what one day buys over another} */
    public static String step(SearchRow before, SearchRow after, Costs costs, String unit) {
        String cost = costs.areNone() ? "" : " and " + money(after.cost() - before.cost());
        return Numbers.duration(after.seen().minutes() - before.seen().minutes()) + cost + " more, for " + difference(before, after)
                + ": finds " + SizeWords.detectable(after.detectableGain(), unit) + " instead of "
                + SizeWords.detectable(before.detectableGain(), "") + ".";
    }

    /** {@return an amount of money} */
    public static String money(double amount) {
        return Numbers.given(Math.round(amount * 100) / 100.0);
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
            changes.add(Numbers.count(Math.abs(after - before), (after > before ? "more " : "fewer ") + noun) + where);
        }
    }

    /** {@return what the columns of the table mean} */
    public static String legend(SearchQuestion question) {
        return "finds: smallest gain found with the chance wanted. limit: what more pulls cannot bring it below. s.e., df: standard "
                + "error and degrees of freedom of the change. drift: what a drift of 1 per hour, and one of 1 per hour² from the middle "
                + "of the day, passes for in the change" + (question.asked().drift() == Drift.NONE ? " (no drift is modelled)" : "")
                + ". least p: of a randomisation test, " + (question.space().oneWay()
                        ? "for which there is one order only and nothing to draw." : "if the order is drawn.");
    }

    /** {@return the smallest p-value that a randomisation test could reach, as the table has it} */
    public static String leastP(SearchRow row, SearchSpace space) {
        double least = row.leastRandomisationP(space);
        return least >= 1 ? "none" : Numbers.resolving(least, "").bare(least);
    }

    /** {@return how the cost of a day is reckoned} */
    public static String cost(Costs costs) {
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

    private static String warmUps(Range warmUps) {
        return "Warm-up pulls are not traded against heat: they take time and add nothing to these figures, so "
                + (warmUps.least() < warmUps.most() ? "of those allowed the fewest" : "those given")
                + " are taken. How many the car needs, and what "
                + "heat leaves on the change with them, is for `fairpull soak` to say, of one order at a time.";
    }

    private static String scope(SearchQuestion question) {
        boolean breaks = question.asked().clock().hoursOf(0).filter(hours -> !hours.breaks().isEmpty()).isPresent();
        return "Every day is one session, " + (breaks ? "its breaks kept and counted in its length, " : "") + "looked at once, at its end. "
                + "Of several sessions or planned looks, `fairpull size` gives the figures: --sequence \"ABA|BAB\", --looks of:3,5.";
    }

    /** {@return what must be known of the answer} */
    public static List<String> warnings(SearchQuestion question) {
        List<String> warnings = new ArrayList<>();
        warnings.add(warmUps(question.space().warmUps()));
        if (question.space().oneWay()) {
            warnings.add("B cannot come off again, so every B stands after every A: whatever moved with the clock counts as the change"
                    + (question.asked().drift() == Drift.NONE ? ", as the drift column says" : " unless it is of the kind modelled")
                    + ", and there is no return to A to show it.");
            warnings.add("B stays on when the car is strapped down again, so the B installs do not show how much fitting B itself scatters"
                    + (question.asked().refitDegreesOfFreedom() > 0 ? "; the record of refit scatter must stand for it."
                            : ": that needs a record of refit scatter (--refit-df)."));
        }
        warnings.add(scope(question));
        return warnings;
    }
}

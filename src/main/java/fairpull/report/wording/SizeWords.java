package fairpull.report.wording;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Sides;
import java.util.ArrayList;
import java.util.List;

/** What a sequence can see, what more pulls cannot pass, and what would reach the power wanted. */
public final class SizeWords {
    private SizeWords() {
    }

    /** {@return the answer as a paragraph} */
    public static String paragraph(SizeQuestion question, SizeAnswer answer, String unit) {
        List<String> sentences = new ArrayList<>();
        sentences.add(question.sequence() + " with " + Numbers.count(question.pulls(), "counted pull") + " per install takes "
                + Numbers.duration(answer.minutes()) + ".");
        sentences.add(answer.power().isPresent() ? sees(question, answer, unit) : cannotBeJudged());
        answer.limit().ifPresent(limit -> sentences.add("More pulls per install cannot bring that below " + detectable(limit, unit)
                + ": refit scatter stays, however many pulls are averaged."));
        answer.looks().ifPresent(looks -> sentences.add(LookWords.cost(question, looks)));
        sentences.add(wouldReach(question, answer, unit));
        sentences.add(randomisation(question, answer));
        return String.join(" ", sentences);
    }

    private static String sees(SizeQuestion question, SizeAnswer answer, String unit) {
        String sides = question.sides() == Sides.TWO ? "two-sided" : "one-sided";
        String found = "A true gain of " + Numbers.given(question.gain(), unit) + " is found with a chance of "
                + Numbers.chance(answer.power().getAsDouble()) + " (error rate " + Numbers.percent(question.errorRate()) + ", " + sides
                + ")";
        if (answer.detectableGain().isEmpty()) {
            return found + ".";
        }
        return found + "; with the chance wanted, " + Numbers.percent(question.powerWanted()) + ", the smallest gain found is "
                + detectable(answer.detectableGain().getAsDouble(), unit) + ".";
    }

    /** {@return a detectable gain as it is printed wherever it is} */
    static String detectable(double gain, String unit) {
        return Numbers.resolving(gain, unit).with(gain);
    }

    private static String cannotBeJudged() {
        return "It cannot be judged from its own data: there are too few installs for refit scatter to show. "
                + "Plan more installs, or give a record of refit scatter with its degrees of freedom.";
    }

    private static String wouldReach(SizeQuestion question, SizeAnswer answer, String unit) {
        String goal = "a chance of " + Numbers.percent(question.powerWanted()) + " for " + Numbers.given(question.gain(), unit);
        if (answer.power().isPresent() && answer.power().getAsDouble() >= question.powerWanted()) {
            return "That reaches what was asked for, " + goal + leastPulls(question, answer) + ".";
        }
        String pulls = answer.pullsNeeded().isPresent()
                ? Numbers.count(answer.pullsNeeded().getAsInt(), "counted pull") + " per install in this order"
                : "no number of pulls up to 100 per install in this order";
        String installs = answer.installsNeeded().isPresent()
                ? Numbers.count(answer.installsNeeded().getAsInt(), "install") + " alternating A B A … with these pulls"
                : "no number of installs up to 30 with these pulls";
        return "To reach " + goal + ": " + pulls + "; " + installs + ".";
    }

    private static String leastPulls(SizeQuestion question, SizeAnswer answer) {
        return answer.pullsNeeded().isPresent() && answer.pullsNeeded().getAsInt() < question.pulls()
                ? "; " + Numbers.count(answer.pullsNeeded().getAsInt(), "counted pull") + " per install would do" : "";
    }

    private static String randomisation(SizeQuestion question, SizeAnswer answer) {
        if (answer.leastRandomisationP() >= 1) {
            return "A randomisation test could show nothing: with so few installs every order gives as large a difference.";
        }
        boolean reachable = answer.leastRandomisationP() <= question.errorRate();
        return "If the order is drawn, a randomisation test could reach " + Numbers.p(answer.leastRandomisationP()) + " at best"
                + (reachable ? "." : ", which is not below the error rate: with so few orders it cannot decide alone.");
    }
}

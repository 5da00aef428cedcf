package fairpull.report.wording;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayFit;
import fairpull.domain.finding.Improvement;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.search.Costs;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a plan can see, in the few words of a panel. */
public final class OutlookWords {
    private static final int MOST_HINTS = 3;

    private OutlookWords() {
    }

    /** {@return the chance of finding the worthwhile gain} */
    public static String chance(SizeAnswer answer) {
        return answer.power().isPresent() ? Numbers.chance(answer.power().getAsDouble()) : "–";
    }

    /** {@return of what the figure in large type is the chance} */
    public static String chanceOfWhat(Plan plan) {
        Question question = plan.question();
        Unit unit = question.deciding().unit();
        return question.worthwhileGainSi().isPresent()
                ? "chance to detect a true gain of " + Numbers.brief(unit.differenceFromSi(question.worthwhileGainSi().getAsDouble()),
                        unit.symbol())
                : "no worthwhile gain yet";
    }

    /** {@return what is still to be said before anything can be reckoned} */
    public static String missing(Plan plan) {
        boolean gain = plan.question().worthwhileGainSi().isEmpty();
        boolean scatter = plan.rig().pullScatter().isEmpty() || plan.rig().refitScatter().isEmpty();
        return "To see what this plan can find, say " + (gain ? "which gain would matter (on Question)" : "")
                + (gain && scatter ? " and " : "") + (scatter ? "how much the rig scatters (on Rig)" : "") + ".";
    }

    /** {@return that nobody can say what a plan will find, and why} */
    public static String blind(Plan plan) {
        return "Nobody can say yet what this plan can find. " + missing(plan);
    }

    /** {@return the figure in large type with its meaning, in a sentence} */
    public static String seen(String chance, String ofWhat) {
        return "This plan has " + (chance.startsWith("8") || chance.startsWith("11" + Numbers.THIN) ? "an " : "a ") + chance + " "
                + ofWhat + ".";
    }

    /** {@return figures by name, in the order in which they are shown} */
    public static Map<String, String> rows(Plan plan, Optional<SizeQuestion> question, Optional<SizeAnswer> answer, DayFit fit,
            Costs costs) {
        Map<String, String> rows = new LinkedHashMap<>();
        Unit unit = plan.question().deciding().unit();
        answer.ifPresent(seen -> {
            rows.put("Smallest detectable gain", seen.detectableGain().isPresent()
                    ? SizeWords.detectable(seen.detectableGain().getAsDouble(), unit.symbol()) + share(plan, seen.detectableGain()) : "–");
            rows.put("Standard error expected", seen.standardError().isPresent()
                    ? Numbers.brief(seen.standardError().getAsDouble(), unit.symbol()) : "–");
            rows.put("More pulls cannot pass", seen.limit().isPresent()
                    ? SizeWords.detectable(seen.limit().getAsDouble(), unit.symbol()) : "–");
        });
        rows.put("On the rig", Numbers.duration(fit.days().stream().mapToDouble(DayClock::minutes).sum()));
        rows.put("Pulls", pulls(plan));
        if (!costs.areNone()) {
            rows.put("Cost", Numbers.given(Math.round(fit.days().stream().mapToDouble(costs::of).sum())));
        }
        rows.put("Finished", String.join("; ", fit.days().stream().map(OutlookWords::finished).toList()));
        answer.ifPresent(seen -> rows.put("If the order is drawn", "least " + Numbers.p(seen.leastRandomisationP())));
        return rows;
    }

    private static String finished(DayClock day) {
        return day.hours().isEmpty() ? "after " + Numbers.duration(day.minutes())
                : DayWords.at(day, day.finishS()) + (day.lateS() > 0 ? ", too late" : "");
    }

    private static String share(Plan plan, OptionalDouble gain) {
        OptionalDouble level = plan.question().expectedLevelSi();
        Unit unit = plan.question().deciding().unit();
        return level.isEmpty() ? "" : " (" + Numbers.brief(
                100 * unit.differenceToSi(gain.getAsDouble()) / level.getAsDouble(), "%") + ")";
    }

    private static String pulls(Plan plan) {
        int counted = plan.sequence().installs().mapToInt(Install::countedPulls).sum();
        int warmUps = plan.sequence().installs().mapToInt(Install::warmUpPulls).sum();
        return counted + " counted" + (warmUps == 0 ? "" : " + " + warmUps + " warm-up");
    }

    /** {@return what would help, the best first} */
    public static List<String> help(List<Improvement> improvements, String unit) {
        if (improvements.isEmpty()) {
            return List.of("Neither more pulls nor more installs would lower that much.");
        }
        List<String> sentences = new ArrayList<>();
        for (Improvement improvement : improvements.subList(0, Math.min(MOST_HINTS, improvements.size()))) {
            sentences.add(change(improvement.kind()) + " " + SizeWords.detectable(improvement.detectableGain(), unit)
                    + (improvement.minutesMore() > 0 ? " for " + Numbers.duration(improvement.minutesMore()) + " more." : "."));
        }
        return sentences;
    }

    private static String change(Improvement.Kind kind) {
        return switch (kind) {
            case TWO_INSTALLS -> "Two more installs take it to";
            case TWO_PULLS -> "Two more pulls in each install:";
            case SIX_REFITS_ON_RECORD -> "Six refits of the unchanged car in a rig record:";
        };
    }
}

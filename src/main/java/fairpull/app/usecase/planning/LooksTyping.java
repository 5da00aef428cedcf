package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import fairpull.domain.plan.Plan;
import fairpull.engine.planning.PlanSizing;
import fairpull.report.wording.LookWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Planned looks as they are typed into a field: after how many installs each falls, the end of the plan understood. */
public final class LooksTyping {
    private LooksTyping() {
    }

    /** {@return looks wherever an order is back at A, and at its end} */
    public static Looks everywhere(Plan plan, Looks.Spending spending) {
        String letters = plan.sequence().letters();
        int installs = (int) plan.sequence().installs().count();
        List<Integer> places = IntStream.range(2, installs)
                .filter(after -> new Looks(spending, List.of(after, installs)).fits(letters)).boxed().collect(Collectors.toList());
        if (places.isEmpty()) {
            throw new UsageException("", "the order " + letters + " is back at A only at its end, so there is no earlier look");
        }
        places.add(installs);
        return new Looks(spending, places);
    }

    /** {@return looks after so many installs each; none for an empty text} */
    public static Optional<Looks> parse(String text, Plan plan, Looks.Spending spending) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        int installs = (int) plan.sequence().installs().count();
        List<Integer> places = new ArrayList<>();
        for (String part : Arrays.stream(text.split("[,;\\s]+")).filter(one -> !one.isBlank()).toList()) {
            places.add(PlanTyping.count(part, 2, installs));
        }
        if (!places.contains(installs)) {
            places.add(installs);
        }
        Looks looks = new Looks(spending, places);
        looks.requireFit(plan.sequence().letters());
        return Optional.of(looks);
    }

    /** {@return the places of looks as {@link #parse} reads them} */
    public static String text(Optional<Looks> looks) {
        return looks.map(Looks::afterInstalls).orElse(List.of()).stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** {@return where the looks of a plan fall and what they cost; only where they fall while the plan cannot be sized; empty without} */
    public static String cost(Plan plan) {
        if (plan.looks().isEmpty()) {
            return "";
        }
        Optional<SizeQuestion> question = PlanSizing.question(plan);
        Optional<SizeAnswer> answer = question.map(SizePlan::size);
        return answer.flatMap(SizeAnswer::looks).map(looks -> LookWords.cost(question.get(), looks) + " "
                        + String.join(" ", LookWords.warnings(answer.get(), Surface.WINDOW)))
                .orElseGet(() -> LookWords.planned(plan.looks().get(), plan.question().errorRate())).strip();
    }
}

package fairpull.engine.heat;

import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.heat.SoakQuestion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Warm-up pulls of a day that hold: every counted pull, as the day is planned, starts within the tolerance of the reference pull, the
 * first counted one of the first install. Pulls beyond the plan are not asked about: a car that still warms slowly needs none for them.
 *
 * @param first of the first install
 * @param later of each later install
 * @param worstK how far the farthest counted pull starts from the reference
 */
record WarmUps(int first, int later, double worstK) {

    /**
     * The fewest pulls that hold, over both numbers jointly; of as many pulls those that hold closest. Days are followed in the order of
     * their warm-ups, so that the first number that holds ends the search.
     *
     * @return empty where {@value SoakPlan#MOST_WARM_UPS} each are not enough
     */
    static Optional<WarmUps> fewest(RepeatedPulls heat, SoakQuestion.Day day, double toleranceK) {
        List<Integer> firsts = firstsThatHold(heat, day, toleranceK);
        // a single install has no later one: as if it had, the total is fewest with none there
        int swaps = Math.max(1, day.letters().length() - 1);
        for (int total = 0; total <= SoakPlan.MOST_WARM_UPS * (swaps + 1); total++) {
            List<WarmUps> held = new ArrayList<>();
            for (int first : firsts) {
                int rest = total - first;
                if (rest >= 0 && rest % swaps == 0 && rest / swaps <= SoakPlan.MOST_WARM_UPS) {
                    held.add(new WarmUps(first, rest / swaps, worst(DayOfPulls.follow(heat, day, first, rest / swaps))));
                }
            }
            Optional<WarmUps> best = held.stream().filter(one -> one.worstK() <= toleranceK)
                    .min(Comparator.comparingDouble(WarmUps::worstK));
            if (best.isPresent()) {
                return best;
            }
        }
        return Optional.empty();
    }

    /** {@return the fewest that hold the first install by itself; empty where none do} */
    static OptionalInt ofFirstInstall(RepeatedPulls heat, SoakQuestion.Day day, double toleranceK) {
        return firstsThatHold(heat, day, toleranceK).stream().mapToInt(first -> first).findFirst();
    }

    private static List<Integer> firstsThatHold(RepeatedPulls heat, SoakQuestion.Day day, double toleranceK) {
        SoakQuestion.Day alone = new SoakQuestion.Day(day.letters().substring(0, 1), day.pulls(), day.intervalS(), day.swapS());
        List<Integer> firsts = new ArrayList<>();
        for (int first = 0; first <= SoakPlan.MOST_WARM_UPS; first++) {
            if (worst(DayOfPulls.follow(heat, alone, first, 0)) <= toleranceK) {
                firsts.add(first);
            }
        }
        return firsts;
    }

    /** Rise before the first counted pull. */
    static double reference(List<PullStart> pulls) {
        return pulls.stream().filter(pull -> !pull.warmUp()).findFirst().orElseThrow().riseK();
    }

    private static double worst(List<PullStart> pulls) {
        double reference = reference(pulls);
        return pulls.stream().filter(pull -> !pull.warmUp()).mapToDouble(pull -> Math.abs(pull.riseK() - reference)).max().orElseThrow();
    }
}

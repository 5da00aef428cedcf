package fairpull.domain.search;

import fairpull.domain.finding.SizeQuestion;
import java.util.OptionalDouble;

/**
 * What `search` is asked.
 *
 * @param asked scatter, gain, test and clock; its order, pulls and warm-ups give way to those tried
 * @param space which days may be tried
 * @param minutes how long the day may last, set-up included
 * @param money what it may cost; empty where that does not matter
 * @param costs what things cost
 */
public record SearchQuestion(SizeQuestion asked, SearchSpace space, double minutes, OptionalDouble money, Costs costs) {
    public SearchQuestion {
        if (!(minutes > 0) || Double.isInfinite(minutes)) {
            throw new IllegalArgumentException("a day lasts more than 0 minutes, was " + minutes);
        }
        if (money.isPresent() && costs.areNone()) {
            throw new IllegalArgumentException("a limit of money needs a cost");
        }
    }

    /** {@return the question of sizing for one of the days} */
    public SizeQuestion sizing(String order, int pulls, int warmUps) {
        return asked.withSequence(order).withPulls(pulls).withWarmUps(warmUps);
    }
}

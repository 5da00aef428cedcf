package fairpull.domain.audit;

import fairpull.domain.plan.Plan;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The fair test that would see what is claimed.
 *
 * @param figure that is claimed about
 * @param gain to be found, in the unit of the figure before; 0 or less where there is none
 * @param outcome whether there is such a test
 * @param plan of the best days, ready to be written or opened: a fair repeat only where the outcome says that one was found
 * @param best the shortest day, or days, that find the gain; where none do, those that come nearest; empty where nothing can be sized
 * @param oneDayFinds the smallest gain that a single day finds, of those no longer than the first that finds the one looked for; empty
 *     where nothing can be sized
 * @param recorded the shortest that would do with a record of refit scatter behind the same figure; empty where none would
 */
public record Repeat(Publication.Figure figure, double gain, Outcome outcome, Optional<Plan> plan, Optional<Days> best,
        OptionalDouble oneDayFinds, Optional<Days> recorded) {
    /** A record is taken to have so many degrees of freedom: some twenty refits of an unchanged car. */
    public static final int RECORD_DEGREES_OF_FREEDOM = 20;
    /** No day is longer; judgement, no source. */
    public static final int HOURS_A_DAY = 10;
    /** Nor are there more days; judgement, no source. */
    public static final int MOST_DAYS = 3;

    /** Whether there is a test that finds the gain. */
    public enum Outcome {
        /** It fits {@value #MOST_DAYS} days of {@value #HOURS_A_DAY} hours. */
        FOUND,
        /** Nothing within these days finds so small a gain. */
        OUT_OF_REACH,
        /** Nobody knows how the figure scatters, not even by a starting guess. */
        NO_SCATTER,
        /** Neither is a gain claimed nor do the figures show one. */
        NO_GAIN
    }

    /**
     * Some days and what they see.
     *
     * @param order installs in letters, days parted by a bar
     * @param pulls counted pulls per install
     * @param warmUps warm-up pulls per install
     * @param minutes of all days together
     * @param detectableGain smallest gain found with the chance wanted, in the unit of the figure before
     */
    public record Days(String order, int pulls, int warmUps, double minutes, double detectableGain) {
        /** {@return how many days} */
        public int days() {
            return order.split("\\|").length;
        }

        /** {@return how many installs they have together} */
        public int installs() {
            return order.replace("|", "").length();
        }
    }
}

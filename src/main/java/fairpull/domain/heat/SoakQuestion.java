package fairpull.domain.heat;

import fairpull.domain.unit.Unit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is asked of the heat of a day.
 *
 * @param pullRiseK what one pull adds to the temperature, above 0
 * @param toleranceK how far a counted pull may start from the reference pull, the first counted one of the first install
 * @param day order and clock
 * @param ambientK what the car cools down to; a day begins there
 * @param sensitivity how the deciding measure follows the temperature
 * @param measure its level and the gain that matters
 */
public record SoakQuestion(double pullRiseK, double toleranceK, Day day, double ambientK, Sensitivity sensitivity, Measure measure) {
    /**
     * Order and clock of a day.
     *
     * @param letters the installs in order, A and B
     * @param pulls counted pulls of each
     * @param intervalS seconds from pull to pull
     * @param swapS what a swap adds to that
     */
    public record Day(String letters, int pulls, double intervalS, double swapS) {
        private static final int MOST_INSTALLS = 40;
        private static final int MOST_PULLS = 100;
        private static final double LONGEST_S = 86_400;

        public Day {
            if (!letters.matches("[AB]{1," + MOST_INSTALLS + "}")) {
                throw new IllegalArgumentException("an order is made of 1 to " + MOST_INSTALLS + " letters A and B, was “" + letters + "”");
            }
            if (pulls < 1 || pulls > MOST_PULLS) {
                throw new IllegalArgumentException("counted pulls must be 1 to " + MOST_PULLS + ", were " + pulls);
            }
            if (!(intervalS > 0 && intervalS <= LONGEST_S) || !(swapS >= 0 && swapS <= LONGEST_S)) {
                throw new IllegalArgumentException("an interval must be above 0 and a swap 0 or more, a day at most, were " + intervalS
                        + " s and " + swapS + " s");
            }
        }
    }

    /**
     * The deciding measure, as far as it was named.
     *
     * @param unit what its figures are printed in
     * @param levelSi its expected level
     * @param worthwhileSi the smallest gain that matters
     */
    public record Measure(Unit unit, OptionalDouble levelSi, OptionalDouble worthwhileSi) {
    }

    public SoakQuestion {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(sensitivity, "sensitivity");
        Objects.requireNonNull(measure, "measure");
        if (!(pullRiseK > 0) || !(toleranceK > 0) || !(ambientK > 0)) {
            throw new IllegalArgumentException("rise, tolerance and ambient must be above 0, were " + pullRiseK + ", " + toleranceK + ", "
                    + ambientK);
        }
    }
}

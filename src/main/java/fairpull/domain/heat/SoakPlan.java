package fairpull.domain.heat;

import fairpull.domain.plan.Part;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the heat asks of a day.
 *
 * @param coolsWithinS seconds in which the rise of a single pull falls to the tolerance; 0 where it never passes it
 * @param holding for 0, 1, 2 … warm-up pulls in the first install: the shortest interval that holds all later pulls within
 *     tolerance, however many they are
 * @param holdingInterval uncertainty of the first of them; empty where the time constants are not fitted
 * @param settledRiseK the rise that is left before a pull after very many at the interval asked for
 * @param warmUpsFirst warm-up pulls that the first install needs at that interval for the pulls planned; empty where
 *     {@link #MOST_WARM_UPS} are not enough
 * @param warmUpsAfterSwap what each later install needs; with the first the fewest pulls that hold the day
 * @param pulls every pull of the day with those warm-ups; with none where none are enough
 * @param bias what is left on B − A on that day
 * @param biasWithoutWarmUps the same with none
 * @param gateBias what two pulls that differ by the tolerance differ by: the most that the gate lets pass
 */
public record SoakPlan(double coolsWithinS, List<Holding> holding, OptionalEnds holdingInterval, double settledRiseK,
                       OptionalInt warmUpsFirst, OptionalInt warmUpsAfterSwap, List<PullStart> pulls, Bias bias, Bias biasWithoutWarmUps,
                       Bias gateBias) {
    /** No more warm-ups than these are looked for. */
    public static final int MOST_WARM_UPS = 60;

    /**
     * An interval that holds.
     *
     * @param warmUps pulls before the first counted one
     * @param intervalS the shortest interval that holds; 0 where any does
     */
    public record Holding(int warmUps, double intervalS) {
    }

    /**
     * Both ends of an interval, where there is one.
     *
     * @param lowS the lower
     * @param highS the upper
     */
    public record OptionalEnds(OptionalDouble lowS, OptionalDouble highS) {
        /** {@return no ends} */
        public static OptionalEnds none() {
            return new OptionalEnds(OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    /**
     * The temperature at which a pull starts.
     *
     * @param install its place in the order, counted from 0
     * @param part what is fitted
     * @param warmUp whether it does not count
     * @param timeS seconds after the first pull of the day
     * @param riseK above ambient
     */
    public record PullStart(int install, Part part, boolean warmUp, double timeS, double riseK) {
    }

    /**
     * A bias on the deciding measure.
     *
     * @param relative to its level
     * @param si in the measure itself; empty without a level
     * @param shareOfWorthwhile against the worthwhile gain, without sign; empty without one
     */
    public record Bias(double relative, OptionalDouble si, OptionalDouble shareOfWorthwhile) {
    }

    public SoakPlan {
        holding = List.copyOf(holding);
        pulls = List.copyOf(pulls);
    }

    /** {@return whether warm-ups were found that hold every install} */
    public boolean isHeld() {
        return warmUpsFirst.isPresent() && warmUpsAfterSwap.isPresent();
    }

    /** {@return the shortest interval that holds without any warm-up pull} */
    public double intervalWithoutWarmUpsS() {
        return holding.get(0).intervalS();
    }
}

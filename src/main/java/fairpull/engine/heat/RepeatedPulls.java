package fairpull.engine.heat;

import fairpull.domain.heat.Mode;
import fairpull.engine.stats.Roots;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * What pulls at a fixed interval heat up to. Each pull adds its rise at once; a share of it dies away with each time constant, and the
 * system is linear, so the shares add up.
 *
 * <p>With dₖ = rise × shareₖ and interval P: before pull n the temperature stands Σ dₖ·e^(−P/τₖ)·(1 − e^(−(n−1)P/τₖ))/(1 − e^(−P/τₖ)) above
 * ambient, and settles at Σ dₖ/(e^(P/τₖ) − 1) (geometric series).
 *
 * <p>Checked against: direct simulation of the linear system (RepeatedPullsTest).
 *
 * @param modes time constants with their shares of a pull's rise
 * @param riseK what one pull adds, above 0
 */
public record RepeatedPulls(List<Mode> modes, double riseK) {
    /** Intervals between a millionth and a million of the longest time constant are looked at. */
    private static final double WIDE = 1e6;
    private static final double ACCURACY = 1e-12;

    public RepeatedPulls {
        modes = List.copyOf(modes);
        if (modes.isEmpty() || !(riseK > 0)) {
            throw new IllegalArgumentException("pulls need a time constant and a rise above 0, was " + riseK);
        }
    }

    /**
     * {@return the rise before a pull, in kelvin above ambient}
     *
     * @param pull counted from 1; the first starts at ambient
     * @param intervalS above 0
     */
    public double riseBefore(int pull, double intervalS) {
        return sum(mode -> {
            double x = intervalS / mode.timeConstantS();
            return Math.exp(-x) * Math.expm1(-(pull - 1) * x) / Math.expm1(-x);
        });
    }

    /**
     * {@return the rise before a pull after very many, in kelvin above ambient}
     *
     * @param intervalS above 0
     */
    public double settledRise(double intervalS) {
        return sum(mode -> 1 / Math.expm1(intervalS / mode.timeConstantS()));
    }

    /**
     * {@return how far short of settled a pull still starts, in kelvin}
     *
     * @param warmUps pulls before it, from ambient
     * @param intervalS above 0
     */
    public double shortfall(int warmUps, double intervalS) {
        return sum(mode -> {
            double x = intervalS / mode.timeConstantS();
            return Math.exp(-warmUps * x) / Math.expm1(x);
        });
    }

    /**
     * {@return what is left of one pull's rise, in kelvin}
     *
     * @param afterS seconds after the pull
     */
    public double leftOfOnePull(double afterS) {
        return sum(mode -> Math.exp(-afterS / mode.timeConstantS()));
    }

    /**
     * {@return the shortest interval at which every pull after so many warm-ups starts within a tolerance of the first of them, in
     *     seconds}
     *
     * @param warmUps pulls before the first counted one, from ambient
     * @param toleranceK above 0
     */
    public double shortestInterval(int warmUps, double toleranceK) {
        return timeAt(interval -> shortfall(warmUps, interval), toleranceK);
    }

    /**
     * {@return the seconds in which the rise of one pull falls to a tolerance; 0 where it never passes it}
     *
     * @param toleranceK above 0
     */
    public double coolsWithin(double toleranceK) {
        return riseK <= toleranceK ? 0 : timeAt(this::leftOfOnePull, toleranceK);
    }

    /** Where a falling function of time passes a level; 0 where it is below from the start. */
    private double timeAt(DoubleUnaryOperator falling, double level) {
        double longest = modes.stream().mapToDouble(Mode::timeConstantS).max().orElseThrow();
        double from = Math.log(longest / WIDE);
        double to = Math.log(longest * WIDE);
        DoubleUnaryOperator excess = log -> falling.applyAsDouble(Math.exp(log)) - level;
        return excess.applyAsDouble(from) <= 0 ? 0 : Math.exp(Roots.between(excess, from, to, ACCURACY));
    }

    private double sum(ToDoubleFunction<Mode> part) {
        return modes.stream().mapToDouble(mode -> riseK * mode.share() * part.applyAsDouble(mode)).sum();
    }
}

package fairpull.engine.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * Roots of a continuous function within a bracket.
 *
 * @see "Chandrupatla (1997), A new hybrid quadratic/bisection algorithm, Advances in Engineering Software 28, 145–149"
 */
public final class Roots {
    private static final int MOST_STEPS = 400;

    private Roots() {
    }

    /**
     * The root between two points, to the last digits that a double holds.
     *
     * @param f continuous, with opposite signs (or zero) at the two points
     * @param from one end
     * @param to the other end
     * @return the point where {@code f} changes its sign
     * @throws IllegalArgumentException if both ends have the same sign
     */
    public static double between(DoubleUnaryOperator f, double from, double to) {
        return between(f, from, to, 2 * Math.ulp(1.0));
    }

    /**
     * The root between two points, to a relative accuracy.
     *
     * @param f continuous, with opposite signs (or zero) at the two points
     * @param from one end
     * @param to the other end
     * @param accuracy relative to the root
     * @return the point where {@code f} changes its sign
     * @throws IllegalArgumentException if both ends have the same sign
     */
    public static double between(DoubleUnaryOperator f, double from, double to, double accuracy) {
        double a = to;
        double b = from;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa * Math.signum(fb) < 0)) {
            throw new IllegalArgumentException("no change of sign between " + from + " and " + to + ": " + fb + ", " + fa);
        }
        double share = 0.5;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = a + share * (b - a);
            double fx = f.applyAsDouble(x);
            double c;
            double fc;
            if (Math.signum(fx) == Math.signum(fa)) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double tolerance = 0.5 * accuracy * Math.abs(best) + Double.MIN_NORMAL;
            double least = tolerance / Math.abs(b - a);
            if (fx == 0 || least > 0.5) {
                return fx == 0 ? x : best;
            }
            share = Math.min(1 - least, Math.max(least, nextShare(new double[] {a, b, c}, new double[] {fa, fb, fc})));
        }
        return a;
    }

    /** Inverse quadratic interpolation where Chandrupatla's criterion trusts it, bisection elsewhere. */
    private static double nextShare(double[] x, double[] f) {
        double xi = (x[0] - x[1]) / (x[2] - x[1]);
        double phi = (f[0] - f[1]) / (f[2] - f[1]);
        if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) {
            return 0.5;
        }
        double alpha = (x[2] - x[0]) / (x[1] - x[0]);
        return f[0] / (f[1] - f[0]) * (f[2] / (f[1] - f[2])) + alpha * (f[0] / (f[2] - f[0])) * (f[1] / (f[2] - f[1]));
    }
}

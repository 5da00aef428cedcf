package fairpull.engine.stats;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals of tails.
 *
 * <p>Checked against: the closed form for normal tails (ExaggerationTest).
 */
public final class Tails {
    private static final int PANELS = 4;
    private static final double[] NODES = new double[PANELS * GaussLegendre.POINTS];
    private static final double[] WEIGHTS = new double[PANELS * GaussLegendre.POINTS];

    static {
        GaussLegendre.fill(0, 1, PANELS, NODES, WEIGHTS);
    }

    private Tails() {
    }

    /**
     * {@return ∫ P(X ≥ x) dx from {@code from} to infinity, over x = from + scale·u/(1 − u)}
     *
     * @param tail P(X ≥ x), falling faster than 1/x
     * @param from where it begins
     * @param scale over which the tail falls, above 0
     */
    public static double integral(DoubleUnaryOperator tail, double from, double scale) {
        double sum = 0;
        for (int k = 0; k < NODES.length; k++) {
            double rest = 1 - NODES[k];
            sum += WEIGHTS[k] * tail.applyAsDouble(from + scale * NODES[k] / rest) * scale / (rest * rest);
        }
        return sum;
    }
}

package fairpull.engine.stats;

/** Gauss–Legendre quadrature in panels, the nodes from Newton's iteration on the Legendre polynomial. */
final class GaussLegendre {
    /** Points a panel. */
    static final int POINTS = 16;
    private static final int NEWTON_STEPS = 8;

    private GaussLegendre() {
    }

    /** Fills nodes and weights for ∫ over [from, to], panels of equal width. */
    static void fill(double from, double to, int panels, double[] nodes, double[] weights) {
        double half = (to - from) / panels / 2;
        for (int i = 0; i < POINTS; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
            double slope = 0;
            for (int step = 0; step < NEWTON_STEPS; step++) {
                double below = 1;
                double value = x;
                for (int degree = 2; degree <= POINTS; degree++) {
                    double next = ((2 * degree - 1) * x * value - (degree - 1) * below) / degree;
                    below = value;
                    value = next;
                }
                slope = POINTS * (x * value - below) / (x * x - 1);
                x -= value / slope;
            }
            double weight = 2 / ((1 - x * x) * slope * slope);
            for (int panel = 0; panel < panels; panel++) {
                nodes[panel * POINTS + i] = from + (2 * panel + 1) * half + half * x;
                weights[panel * POINTS + i] = half * weight;
            }
        }
    }
}

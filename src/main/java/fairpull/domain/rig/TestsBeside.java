package fairpull.domain.rig;

import java.util.List;

/**
 * Tests beside the record of the rig on which they were run: what their installs of A show of it.
 *
 * @param together the record with the installs of A taken in
 * @param tests how many tests are new to the record
 * @param layers pull and refit scatter, where a test tells them
 */
public record TestsBeside(RigEvidence together, int tests, List<LayerBeside> layers) {
    /**
     * One layer of scatter.
     *
     * @param layer which
     * @param tests each test that tells it, in the order of time
     * @param share all tests pooled, as a share of the level
     * @param degreesOfFreedom the sum over the tests
     * @param record what the record says
     * @param f variance of the tests over that of the record
     * @param pValue two-sided, of equal scatter
     */
    public record LayerBeside(Layer layer, List<OfTest> tests, double share, double degreesOfFreedom, RigEvidence.Pooled record, double f,
            double pValue) {
        /** At or below this p the scatter is said to differ. */
        public static final double LEVEL = 0.05;

        public LayerBeside {
            tests = List.copyOf(tests);
        }

        /** {@return whether the tests are shown to scatter otherwise than the record} */
        public boolean differs() {
            return pValue <= LEVEL;
        }
    }

    /** The scatter of one test: its name, its first session, the share of the level, its interval. */
    public record OfTest(String test, String session, double share, double low, double high) {
    }

    public TestsBeside {
        layers = List.copyOf(layers);
    }
}

package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published fits of models with one random intercept; sources and tolerances in published/mixed-models. */
class MixedModelPublishedTest {
    @Test
    void dyestuff() {
        Fit fit = fit(new Published("mixed-models/dyestuff.csv"), "batch", "yield", InstallDesign.CONSTANT, List.of());
        assertThat(fit.components.refitVariance()).isCloseTo(1764.05, withinPercentage(1e-9));
        assertThat(fit.components.pullVariance()).isCloseTo(2451.25, withinPercentage(1e-9));
        assertThat(fit.contrast.estimate()).isCloseTo(1527.5, offset(1e-9));
        assertThat(fit.contrast.standardError()).isCloseTo(19.38, offset(5e-3));
        // an equal number a batch: the variance of the mean is the mean square between batches over their number of values
        assertThat(fit.contrast.standardError()).isCloseTo(Math.sqrt(11271.50 / 30), withinPercentage(1e-9));
        assertThat(fit.contrast.degreesOfFreedom()).isCloseTo(5, offset(1e-9));
    }

    @Test
    void dyestuffWithoutBatchVariance() {
        Fit fit = fit(new Published("mixed-models/dyestuff2.csv"), "batch", "yield", InstallDesign.CONSTANT, List.of());
        assertThat(fit.components.refitVariance()).isZero();
        assertThat(Math.sqrt(fit.components.pullVariance())).isCloseTo(3.715684, offset(5e-7));
        assertThat(fit.contrast.estimate()).isCloseTo(5.6656, offset(5e-5));
    }

    @Test
    void rails() {
        Fit fit = fit(new Published("mixed-models/rail.csv"), "rail", "travel", InstallDesign.CONSTANT, List.of());
        assertThat(Math.sqrt(fit.components.refitVariance())).isCloseTo(24.80547, offset(5e-6));
        assertThat(Math.sqrt(fit.components.pullVariance())).isCloseTo(4.02078, offset(5e-6));
        assertThat(fit.contrast.estimate()).isCloseTo(66.5, offset(1e-9));
        assertThat(fit.contrast.standardError()).isCloseTo(10.17104, offset(5e-6));
    }

    @Test
    void sleepDeprivation() {
        Published data = new Published("mixed-models/sleepstudy.csv");
        List<double[]> days = List.of(data.numbers("days"));
        Fit slope = fit(data, "subject", "reaction", 0, days);
        assertThat(Math.sqrt(slope.components.refitVariance())).isCloseTo(37.1238268, withinPercentage(1e-4));
        assertThat(Math.sqrt(slope.components.pullVariance())).isCloseTo(30.9912339, withinPercentage(1e-4));
        assertThat(slope.contrast.estimate()).isCloseTo(10.467, offset(5e-4));
        assertThat(slope.contrast.standardError()).isCloseTo(0.804221429, withinPercentage(1e-4));
        assertThat(slope.contrast.degreesOfFreedom()).isCloseTo(161, offset(1e-4));
        Fit intercept = fit(data, "subject", "reaction", InstallDesign.CONSTANT, days);
        assertThat(intercept.contrast.estimate()).isCloseTo(251.405, offset(5e-4));
        assertThat(intercept.contrast.standardError()).isCloseTo(9.74671627, withinPercentage(1e-4));
        assertThat(intercept.contrast.degreesOfFreedom()).isCloseTo(22.8102, offset(5e-5));
    }

    /** Both materials on every boy: the t test on differences. */
    @Test
    void shoes() {
        Fit fit = shoes(false);
        double t = fit.contrast.estimate() / fit.contrast.adjustedStandardError();
        assertThat(t * t).isCloseTo(11.215, offset(5e-4));
        assertThat(fit.contrast.degreesOfFreedom()).isCloseTo(9, offset(1e-6));
        assertThat(StudentT.bothTails(t, fit.contrast.degreesOfFreedom())).isCloseTo(0.008539, offset(5e-7));
        assertThat(fit.components.refitVariance()).isCloseTo(6.10088898, withinPercentage(1e-4));
        assertThat(fit.components.pullVariance()).isCloseTo(0.0749444433, withinPercentage(1e-4));
    }

    @Test
    void shoesWithoutTwoValues() {
        Fit fit = shoes(true);
        double t = fit.contrast.estimate() / fit.contrast.adjustedStandardError();
        assertThat(fit.contrast.estimate()).isCloseTo(.346046666, offset(5e-9));
        assertThat(fit.contrast.standardError()).isCloseTo(.141287834, offset(5e-9));
        assertThat(fit.contrast.adjustedStandardError()).isCloseTo(.141398813, offset(5e-9));
        assertThat(fit.contrast.degreesOfFreedom()).isCloseTo(7.02190436, offset(5e-7));
        assertThat(t * t).isCloseTo(5.9893, offset(5e-5));
        assertThat(StudentT.bothTails(t, fit.contrast.degreesOfFreedom())).isCloseTo(0.04418, offset(5e-6));
    }

    /** A split plot: blocks are sessions, harvest is the part, a plot within a block is an install, sowing dates are covariates. */
    @Test
    void beets() {
        Published data = new Published("mixed-models/beets.csv");
        List<double[]> columns = new ArrayList<>(TimeColumns.sessions(data.index("block")));
        columns.addAll(TimeColumns.sessions(data.index("sow")));
        columns.add(Arrays.stream(data.index("harvest")).asDoubleStream().toArray());
        ResponseSums sums = InstallDesign.of(data.index("block", "harvest"), columns).sumsOf(data.numbers("sugar"));
        VarianceComponents components = Reml.estimate(sums, ScatterKnowledge.none());
        ContrastFit fit = ContrastFit.of(sums, components, ScatterKnowledge.none(), columns.size() - 1);
        double t = fit.estimate() / fit.adjustedStandardError();
        assertThat(t * t).isCloseTo(15.21, offset(5e-3));
        assertThat(fit.degreesOfFreedom()).isCloseTo(2, offset(1e-6));
        assertThat(StudentT.bothTails(t, fit.degreesOfFreedom())).isCloseTo(0.0599, offset(5e-5));
    }

    private static Fit shoes(boolean withoutTwo) {
        Published data = new Published("mixed-models/shoes.csv");
        List<Integer> boys = new ArrayList<>();
        List<Double> material = new ArrayList<>();
        List<Double> wear = new ArrayList<>();
        for (int boy = 0; boy < 10; boy++) {
            for (int m = 0; m < 2; m++) {
                if (!(withoutTwo && boy == m)) {
                    boys.add(boy);
                    material.add((double) m);
                    wear.add(data.numbers(m == 0 ? "a" : "b")[boy]);
                }
            }
        }
        return fit(boys.stream().mapToInt(i -> i).toArray(), wear.stream().mapToDouble(v -> v).toArray(), 0,
                List.of(material.stream().mapToDouble(v -> v).toArray()));
    }

    private static Fit fit(Published data, String unit, String value, int column, List<double[]> columns) {
        return fit(data.index(unit), data.numbers(value), column, columns);
    }

    private static Fit fit(int[] unit, double[] values, int column, List<double[]> columns) {
        ResponseSums sums = InstallDesign.of(unit, columns).sumsOf(values);
        VarianceComponents components = Reml.estimate(sums, ScatterKnowledge.none());
        return new Fit(components, ContrastFit.of(sums, components, ScatterKnowledge.none(), column));
    }

    private record Fit(VarianceComponents components, ContrastFit contrast) {
    }
}

package fairpull.engine.rig;

import fairpull.domain.rig.Baseline;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.LayerScatter;
import fairpull.domain.rig.RigRecord;
import fairpull.engine.stats.NestedEstimate;
import fairpull.engine.stats.NestedReml;
import fairpull.engine.stats.NestedSums;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The scatter that repeated baselines show: value = mean + day + refit + pull, each variance by restricted maximum likelihood, with
 * Satterthwaite's degrees of freedom 2·s⁴/var(s²) from the expected information. A layer that the table does not repeat within the next
 * cannot be told from it; both are then given as one.
 *
 * @param mean of the table, in the unit of its values
 * @param scatter layer by layer, as shares of the level
 */
public record BaselineScatter(double mean, List<LayerScatter> scatter) {
    /** One-sided 95 % of the normal distribution. */
    private static final double UPPER = 1.645;

    /**
     * Estimates the scatter of a table.
     *
     * @param baseline values of repeated installs
     * @param level above 0, in the unit of the values: what shares refer to
     * @return mean and scatter
     * @throws IllegalArgumentException if there is one value only, all values are equal, pulls never differ within an install, or the
     *     scatter is as large as the level
     */
    public static BaselineScatter of(Baseline baseline, double level) {
        if (baseline.pulls() < 2) {
            throw new IllegalArgumentException("one value has no scatter");
        }
        if (baseline.sessions().stream().flatMap(session -> session.installs().stream()).flatMap(install -> install.values().stream())
                .distinct().count() < 2) {
            throw new IllegalArgumentException("all values are equal");
        }
        NestedSums sums = sums(baseline);
        NestedEstimate fit = NestedReml.estimate(sums);
        List<LayerScatter> scatter = new ArrayList<>();
        List<Layer> pending = new ArrayList<>(List.of(Layer.PULL));
        NestedEstimate.Component current = fit.lowest();
        for (Layer layer : List.of(Layer.REFIT, Layer.DAY)) {
            Optional<NestedEstimate.Component> above = above(layer, fit);
            if (above.isPresent()) {
                scatter.add(scatter(pending, current, level));
                pending = new ArrayList<>();
                current = above.get();
            }
            if (above.isPresent() || isRepeated(layer, sums)) {
                pending.add(layer);
            }
        }
        scatter.add(scatter(pending, current, level));
        return new BaselineScatter(fit.mean(), scatter);
    }

    /** The variance that begins with a layer, where the model has one. */
    private static Optional<NestedEstimate.Component> above(Layer layer, NestedEstimate fit) {
        return layer == Layer.REFIT ? fit.betweenInstalls() : fit.betweenSessions();
    }

    /** Whether values differ in that layer at all; one session holds no day scatter, one install no refit scatter. */
    private static boolean isRepeated(Layer layer, NestedSums sums) {
        return layer == Layer.REFIT ? sums.installs() > 1 : sums.repeatsSessions();
    }

    private static LayerScatter scatter(List<Layer> layers, NestedEstimate.Component component, double level) {
        double atMost = Math.sqrt(component.variance() + UPPER * component.standardError());
        return new LayerScatter(layers, component.standardDeviation() / level, component.degreesOfFreedom(), atMost / level);
    }

    private static NestedSums sums(Baseline baseline) {
        int[] sessions = new int[baseline.pulls()];
        int[] installs = new int[sessions.length];
        double[] values = new double[sessions.length];
        int k = 0;
        int install = 0;
        for (int s = 0; s < baseline.sessions().size(); s++) {
            for (Baseline.Install one : baseline.sessions().get(s).installs()) {
                for (double value : one.values()) {
                    sessions[k] = s;
                    installs[k] = install;
                    values[k++] = value;
                }
                install++;
            }
        }
        return NestedSums.of(sessions, installs, values);
    }

    /** {@return the means of all installs over the level, in the order of the table} */
    public static List<RigRecord.InstallMean> installMeans(Baseline baseline, double level) {
        List<RigRecord.InstallMean> means = new ArrayList<>();
        for (Baseline.Session session : baseline.sessions()) {
            for (Baseline.Install install : session.installs()) {
                double mean = install.values().stream().mapToDouble(value -> value).average().orElseThrow();
                means.add(new RigRecord.InstallMean(session.name(), install.label(), install.values().size(), mean / level));
            }
        }
        return means;
    }
}

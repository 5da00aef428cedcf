package fairpull.engine.running;

import fairpull.domain.running.ScatterSoFar;
import fairpull.engine.stats.OneWay;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Pull scatter so far: √(Σ (y − own install's mean)² / Σ (n − 1)). It says nothing of the change. */
public final class PooledScatter {
    private PooledScatter() {
    }

    /** {@return the scatter pooled within installs; empty until one of them has two pulls} */
    public static Optional<ScatterSoFar> of(List<List<Double>> installs) {
        int[] group = IntStream.range(0, installs.size()).flatMap(i -> installs.get(i).stream().mapToInt(value -> i)).toArray();
        double[] values = installs.stream().flatMapToDouble(values1 -> values1.stream().mapToDouble(value -> value)).toArray();
        if (installs.stream().noneMatch(one -> one.size() > 1)) {
            return Optional.empty();
        }
        OneWay pooled = OneWay.of(group, values);
        return Optional.of(new ScatterSoFar(Math.sqrt(pooled.withinMeanSquare()), pooled.withinDegreesOfFreedom()));
    }
}

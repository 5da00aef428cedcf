package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairpull.engine.stats.MaximumT;
import fairpull.engine.stats.Normal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The largest difference along a sweep against that of correlated normal values on a grid, which is held against mvtnorm elsewhere. */
class PickedSpeedTest {
    private static final MaximumT.Scatter KNOWN = new MaximumT.Scatter(Double.POSITIVE_INFINITY, 0);
    private static final int PER_LENGTH = 12;
    private static final int MARGIN = 36;

    /**
     * The cosine between bumps exp(−x²/ℓ²) is exp(−δ²/(2ℓ²)) exactly. With 20,000 draws the quantile is simulated to a standard error of
     * 0.01; the grid of ℓ/12 misses less than 0.002 of a peak.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 1, 4, 10, 20})
    void theCriticalValueIsThatOfASimulatedSweep(double lengths) {
        List<double[]> bumps = new ArrayList<>();
        int speeds = 1 + (int) Math.round(PER_LENGTH * lengths);
        for (int speed = 0; speed < speeds; speed++) {
            double[] bump = new double[speeds + 2 * MARGIN];
            for (int k = 0; k < bump.length; k++) {
                double apart = (double) (k - MARGIN - speed) / PER_LENGTH;
                bump[k] = Math.exp(-apart * apart);
            }
            bumps.add(bump);
        }
        MaximumT maximum = MaximumT.of(bumps);
        double simulated = maximum.criticalValue(maximum.draw(1945, 20_000, KNOWN, true), KNOWN, 0.05, true);

        assertThat(PickedSpeed.criticalValue(100 * lengths, 100)).isCloseTo(simulated, within(0.025));
    }

    /** Less than independent speeds 10 rpm apart would ask for, and more the longer the sweep is. */
    @Test
    void aLongerSweepAsksForMoreWithoutEnd() {
        assertThat(PickedSpeed.criticalValue(0, 100)).isCloseTo(Normal.upperQuantile(0.025), within(1e-12));
        double before = 0;
        for (double rpm = 1; rpm < 1e9; rpm *= 10) {
            double value = PickedSpeed.criticalValue(rpm, 100);
            assertThat(value).isGreaterThan(before).isLessThan(Normal.upperQuantile(0.025 / (1 + rpm / 10)));
            before = value;
        }
        assertThatThrownBy(() -> PickedSpeed.criticalValue(-1, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PickedSpeed.criticalValue(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PickedSpeed.criticalValue(Double.NaN, 100)).isInstanceOf(IllegalArgumentException.class);
    }
}

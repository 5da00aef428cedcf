package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

/** A change that books agree on, and p-values by an independent simulation. */
class ChangePointTest {
    /** Cobb (1978): the Nile. */
    @Test
    void nile() {
        Published data = new Published("rig-record/nile.csv");
        ChangePoint change = ChangePoint.of(data.numbers("flow"), 1);
        assertThat(data.numbers("year")[change.first()]).isEqualTo(1899);
        assertThat(change.before()).isCloseTo(1097.75, offset(5e-3));
        assertThat(change.after()).isCloseTo(849.97, offset(5e-3));
        assertThat(change.pValue()).isEqualTo(1e-4);
    }

    /** Simulated in R 4.2.2 with a million series each; tolerance four errors of 9999 draws. */
    @Test
    void pValuesAgreeWithASimulationInR() {
        same(new double[] {190.2, 190.9, 189.7, 192.4, 193.1, 192.2, 193.0}, 3, 0.009912);
        same(new double[] {188.1, 190.4, 189.2, 190.0, 188.8}, 1, 0.512348);
        same(new double[] {1, 2, 2, 1, 3, 3, 2, 4}, 4, 0.141386);
        same(new double[] {0.2, -0.4, 0.1, 1.4, 0.9, 1.2, -0.1, 1.6, 0.7, 1.1, 0.4, 1.3}, 3, 0.118428);
    }

    private static void same(double[] values, int first, double pValue) {
        ChangePoint change = ChangePoint.of(values, 1);
        assertThat(change.first()).isEqualTo(first);
        assertThat(change.pValue()).isCloseTo(pValue, offset(4 * Math.sqrt(pValue * (1 - pValue) / 9999)));
    }

    @Test
    void equalValuesShowNoChange() {
        assertThatThrownBy(() -> ChangePoint.of(new double[] {2, 2, 2}, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ChangePoint.of(new double[] {2, 3}, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}

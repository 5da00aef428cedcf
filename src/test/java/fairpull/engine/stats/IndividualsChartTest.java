package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Printed charts and rules; sources and tolerances in published/rig-record. */
class IndividualsChartTest {
    private static final double[] FLOW = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

    /** NIST/SEMATECH e-Handbook 6.3.2.2 (from memory). */
    @Test
    void flowRates() {
        IndividualsChart chart = IndividualsChart.of(FLOW);
        assertThat(chart.centre()).isCloseTo(50.81, offset(5e-3));
        assertThat(chart.sigma() * IndividualsChart.D2).isCloseTo(1.8778, offset(5e-5));
        assertThat(chart.high()).isCloseTo(55.8041, offset(5e-4));
        assertThat(chart.low()).isCloseTo(45.8159, offset(5e-4));
        assertThat(chart.beyond(FLOW)).isEmpty();
        assertThat(chart.firstRun(FLOW)).isEmpty();
    }

    /** MPC62.DAT, e-Handbook: mean, level-2 and pooled level-1 standard deviation (from memory). */
    @Test
    void checkStandard() {
        Published data = new Published("rig-record/check-standard.csv");
        double[] values = data.numbers("value");
        IndividualsChart chart = IndividualsChart.of(values);
        double squares = Arrays.stream(values).map(value -> Math.pow(value - chart.centre(), 2)).sum();
        double shortTerm = Arrays.stream(data.numbers("short_term")).map(s -> s * s).average().orElseThrow();
        assertThat(chart.centre()).isCloseTo(97.0698, offset(5e-5));
        assertThat(Math.sqrt(squares / 24)).isCloseTo(0.0268, offset(5e-5));
        assertThat(Math.sqrt(shortTerm)).isCloseTo(0.0614, offset(5e-5));
        assertThat(chart.beyond(values)).isEmpty();
        assertThat(chart.firstRun(values)).isEmpty();
    }

    @Test
    void marksWhatLiesBeyondALimitAndWhereARunBegins() {
        double[] jump = {0, 1, 0, 1, 0, 1, 0, 9};
        assertThat(IndividualsChart.of(jump).beyond(jump)).containsExactly(7);
        double[] shifted = {5, -1, 1, -1, 1, 2, 1, 2, 1, 2, 1, 2};
        assertThat(new IndividualsChart(0, 10).firstRun(shifted)).hasValue(4);
        assertThat(new IndividualsChart(1, 10).firstRun(new double[] {2, 2, 2, 2, 1, 2, 2, 2, 2, 2, 2, 2})).isEmpty();
        assertThat(new IndividualsChart(1, 10).firstRun(new double[] {0, 0, 0, 0, 0, 0, 0, 0})).hasValue(0);
    }

    /** Champ and Woodall (1987): 152.73 points to a false alarm, from E_k = 1 + p·E_(k+1) + p·E_1 for a run of k. */
    @Test
    void bothRulesTogetherAlarmOnceIn153Points() {
        double p = 1 - StudentT.upperTail(3, Double.POSITIVE_INFINITY) - 0.5;
        double constant = 0;
        double ofFirst = 0;
        for (int run = IndividualsChart.RUN - 1; run >= 1; run--) {
            constant = 1 + p * constant;
            ofFirst = p * ofFirst + p;
        }
        double afterOne = constant / (1 - ofFirst);
        assertThat(1 + 2 * p * afterOne).isCloseTo(152.73, offset(5e-3));
    }

    @Test
    void oneValueHasNoMovingRange() {
        assertThatThrownBy(() -> IndividualsChart.of(new double[] {1})).isInstanceOf(IllegalArgumentException.class);
    }
}

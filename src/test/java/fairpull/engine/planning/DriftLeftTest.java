package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drift that passes for a change, in units of the spacing of installs and its square. The figures are mean position, and mean squared
 * position, of B less that of A, worked out by hand and confirmed by a simulation of 20,000 campaigns in R 4.2.2.
 */
class DriftLeftTest {
    /** Four pulls five minutes apart and a swap of forty: installs are an hour apart. */
    private static final SizeQuestion.Clock HOURLY = new SizeQuestion.Clock(5, 40, 0);

    @ParameterizedTest
    @CsvSource({"AB, 1, 0", "ABA, 0, -1", "ABBA, 0, -2", "ABAB, 1, 0", "ABABA, 0, -1.6666667", "ABABAB, 1, 0", "ABBABAAB, 0, 0"})
    void whereNoDriftIsModelled(String order, double linear, double quadratic) {
        DriftLeft left = DriftLeft.of(question(order, Drift.NONE));

        assertThat(left.linear()).isCloseTo(linear, within(1e-7));
        assertThat(left.quadratic()).isCloseTo(quadratic, within(1e-7));
        assertThat(OrderShape.of(order).meanLean()).isCloseTo(linear, within(1e-12));
        assertThat(OrderShape.of(order).meanBow()).isCloseTo(quadratic, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"ABA, -1", "ABBA, -2", "ABABA, -1.6666667", "ABBABAAB, 0"})
    void aLinearModelTakesTheLineOutAndLeavesBalancedOrdersTheirCurve(String order, double quadratic) {
        DriftLeft left = DriftLeft.of(question(order, Drift.LINEAR));

        assertThat(left.linear()).isZero();
        assertThat(left.quadratic()).isCloseTo(quadratic, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"ABABAB", "ABBABAAB", "ABABABA"})
    void aQuadraticModelTakesBothOut(String order) {
        assertThat(DriftLeft.of(question(order, Drift.QUADRATIC))).isEqualTo(new DriftLeft(0, 0));
    }

    private static SizeQuestion question(String order, Drift drift) {
        return new SizeQuestion(order, 4, 0, 1, 0, 0.5, 5, 1, 0.8, 0.05, Sides.TWO, drift, HOURLY);
    }
}

package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.plan.Definition;
import fairpull.domain.unit.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A correction not applied, applied twice, applied to some pulls; 1.0319 is DIN 70020 at 25 °C and 990 hPa, 1013/990·√(298/293). */
class CorrectionChecksTest {
    private static final double FACTOR = 1.0319;

    private static State state(PullCheck check, double ratio, double factor) {
        return check.check(List.of(Traces.sweep(1).correctedOverMeasured(ratio).air(factor).trace())).state();
    }

    @Test
    void appliedOnceIsClear() {
        assertThat(state(CorrectionRatio.twice(), FACTOR, FACTOR)).isEqualTo(State.CLEAR);
        assertThat(state(CorrectionRatio.notApplied(), FACTOR, FACTOR)).isEqualTo(State.CLEAR);
    }

    @Test
    void appliedTwiceIsTheSquareOfTheFactor() {
        assertThat(state(CorrectionRatio.twice(), FACTOR * FACTOR, FACTOR)).isEqualTo(State.RAISED);
        assertThat(state(CorrectionRatio.notApplied(), FACTOR * FACTOR, FACTOR)).isEqualTo(State.CLEAR);
    }

    @Test
    void notAppliedIsOne() {
        assertThat(state(CorrectionRatio.notApplied(), 1, FACTOR)).isEqualTo(State.RAISED);
        assertThat(state(CorrectionRatio.twice(), 1, FACTOR)).isEqualTo(State.CLEAR);
    }

    @Test
    void airNearTheReferenceTellsNothing() {
        assertThat(state(CorrectionRatio.twice(), 1, 1.005)).isEqualTo(State.NOT_APPLICABLE);
        assertThat(new CorrectionStep(band()).check(List.of(Traces.sweep(1).air(1.005).trace(),
                Traces.sweep(2).named("A1-2").air(1.005).trace())).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void aPullThatStepsByTheFactorWithinAnInstallIsNamed() {
        CheckOutcome outcome = step("A1-2", FACTOR);

        assertThat(outcome.names()).containsExactly("A1-1/A1-2");
        assertThat(outcome.figures()).containsExactly(FACTOR);
        assertThat(step("A1-2", 1 / FACTOR).state()).isEqualTo(State.RAISED);
    }

    @Test
    void ordinaryScatterAndAnotherInstallAreNoStep() {
        assertThat(step("A1-2", 1).state()).isEqualTo(State.CLEAR);
        assertThat(step("A1-2", 1.01).state()).isEqualTo(State.CLEAR);
        assertThat(step("B1-1", FACTOR).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    private static CheckOutcome step(String second, double by) {
        return new CorrectionStep(band()).check(List.of(Traces.sweep(1).air(FACTOR).trace(),
                Traces.sweep(2).times(Quantity.POWER, by, 2).named(second).air(FACTOR).trace()));
    }

    private static Definition.MeanOverBand band() {
        return new Definition.MeanOverBand(Quantity.POWER, Traces.LOW, Traces.HIGH);
    }
}

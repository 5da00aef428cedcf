package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power against torque × engine speed. Ratios of units: NIST SP 811, appendix B (hp 745.6999 W, metric hp 735.4988 W, lbf·ft 1.355818 N·m). */
class PowerIdentityTest {
    private static CheckOutcome mixUp(Traces pull) {
        return new UnitMixUp().check(List.of(pull.trace()));
    }

    private static CheckOutcome disagreement(Traces pull) {
        return new PowerAgainstTorque().check(List.of(pull.trace()));
    }

    @Test
    void withinRoundingItHolds() {
        assertThat(mixUp(Traces.sweep(1)).state()).isEqualTo(State.CLEAR);
        assertThat(disagreement(Traces.sweep(1)).state()).isEqualTo(State.CLEAR);
        Traces coarse = Traces.sweep(2).times(Quantity.POWER, 1, 0).times(Quantity.TORQUE, 1, 0);

        assertThat(mixUp(coarse).state()).isEqualTo(State.CLEAR);
        assertThat(disagreement(coarse).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void withoutTorqueItDoesNotApply() {
        assertThat(disagreement(Traces.sweep(1).without(Quantity.TORQUE)).state()).isEqualTo(State.NOT_APPLICABLE);
    }

    @ParameterizedTest
    @CsvSource({"PS, N·m, 'PS → hp', 0.98632", "kW, N·m, 'kW → hp', 1.34102", "hp, lbf·ft, 'lbf·ft → N·m', 0.737562",
        "PS, lbf·ft, 'PS → hp, lbf·ft → N·m', 0.727472"})
    void theUnitMixedUpIsNamed(String power, String torque, String explanation, double ratio) {
        CheckOutcome outcome = mixUp(Traces.sweep(3).readAs(Quantity.POWER, unit(power)).readAs(Quantity.TORQUE, unit(torque)));

        assertThat(outcome.names()).containsExactly("A1-1 (" + explanation + ")");
        assertThat(outcome.figures().get(0)).isCloseTo(ratio, within(2e-4));
        assertThat(disagreement(Traces.sweep(3).readAs(Quantity.POWER, unit(power)).readAs(Quantity.TORQUE, unit(torque))).state())
                .isEqualTo(State.NOT_APPLICABLE);
    }

    @Test
    void psReadAsKilowattIsNotTakenForPoundFeet() {
        Traces metric = Traces.sweep(4).times(Quantity.POWER, 745.6999 / 735.4988, 2).readAs(Quantity.POWER, Units.KILOWATT);

        assertThat(mixUp(metric).names()).containsExactly("A1-1 (kW → PS)");
        assertThat(mixUp(Traces.sweep(4).times(Quantity.TORQUE, 1 / 1.355818, 2)).names()).containsExactly("A1-1 (N·m → lbf·ft)");
    }

    @Test
    void aThousandIsKnownThoughTheRatioVariesByPercents() {
        Traces pull = Traces.sweep(9);
        double[] power = pull.reading(Quantity.POWER);
        Traces watts = pull.put(Quantity.POWER, Units.KILOWATT, row -> Units.HORSEPOWER.toSi(power[row]) * (1 + 0.02 * Math.sin(row / 9.0)));

        assertThat(mixUp(watts).names()).containsExactly("A1-1 (kW → W)");
    }

    @Test
    void aPointOffByOnePlaceIsNamed() {
        assertThat(mixUp(Traces.sweep(5).times(Quantity.POWER, 10, 1)).names()).containsExactly("A1-1 (×10)");
        assertThat(mixUp(Traces.sweep(5).times(Quantity.TORQUE, 10, 1)).names()).containsExactly("A1-1 (÷10)");
    }

    @Test
    void aRatioThatNoUnitExplainsIsGiven() {
        CheckOutcome outcome = disagreement(Traces.sweep(6).times(Quantity.POWER, 1.03, 2));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isCloseTo(1.03, within(1e-4));
        assertThat(mixUp(Traces.sweep(6).times(Quantity.POWER, 1.03, 2)).state()).isEqualTo(State.CLEAR);
    }

    @Test
    void anOffsetIsGivenInPower() {
        Traces pull = Traces.sweep(7);
        double[] power = pull.reading(Quantity.POWER);
        CheckOutcome outcome = disagreement(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> power[row] + 12));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isNaN();
        assertThat(outcome.figures().get(1)).isCloseTo(12 * 745.6999, within(20.0));
    }

    @Test
    void whereOneSideIsSmoothedItSaysByHowMuchAndWhere() {
        Traces pull = Traces.sweep(8);
        double[] power = pull.reading(Quantity.POWER);
        CheckOutcome outcome = disagreement(pull.put(Quantity.POWER, Units.HORSEPOWER, row -> row > 150 && row < 170
                ? Traces.rounded(power[row] * (1 + 0.05 * Math.sin((row - 150) / 20.0 * Math.PI)), 2) : power[row]));

        assertThat(outcome.state()).isEqualTo(State.RAISED);
        assertThat(outcome.figures().get(0)).isNaN();
        assertThat(outcome.figures().get(1)).isNaN();
        assertThat(outcome.figures().get(2)).isCloseTo(0.05, within(0.001));
        assertThat(Units.RPM.fromSi(outcome.figures().get(3))).isCloseTo(6000, within(60.0));
    }

    private static Unit unit(String symbol) {
        return Units.find(symbol).orElseThrow();
    }
}

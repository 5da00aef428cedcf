package fairpull.engine.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.heat.Mode;
import fairpull.domain.heat.Sensitivity;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakPlan.OptionalEnds;
import fairpull.domain.heat.SoakPlan.PullStart;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SoakPlanningTest {
    private static final List<Mode> ONE = List.of(new Mode(540, 1));
    private static final SoakQuestion.Measure HP = new SoakQuestion.Measure(Units.HORSEPOWER,
            OptionalDouble.of(Units.HORSEPOWER.toSi(190)), OptionalDouble.of(Units.HORSEPOWER.toSi(3)));

    /** r∞ = 6/(e^(300/540) − 1) = 8.07 K; 8.07·e^(−w·300/540) ≤ 2 first at w = 3 (computed by hand). */
    @Test
    void warmUpsFollowFromTheClosedForm() {
        SoakPlan plan = plan(ONE, "ABA", 300, 1200, new Sensitivity.InletRule());

        assertThat(plan.settledRiseK()).isCloseTo(6 / (Math.exp(300 / 540.0) - 1), within(1e-9));
        assertThat(plan.warmUpsFirst()).hasValue(3);
        assertThat(counted(plan)).allSatisfy(pull -> assertThat(pull.riseK()).isCloseTo(counted(plan).get(0).riseK(), within(2.0)));
    }

    /** A swap lets r∞·(1 − e^(−S/τ)) escape, of which e^(−wP/τ) is missing after w warm-ups (algebra). */
    @Test
    void warmUpsAfterASwapAreTheFewestThatHold() {
        SoakPlan plan = plan(ONE, "ABA", 300, 1200, new Sensitivity.InletRule());
        int needed = plan.warmUpsAfterSwap().getAsInt();
        double settled = plan.settledRiseK();
        double shortfall = settled * (1 - Math.exp(-1200 / 540.0)) * Math.exp(-needed * 300 / 540.0);
        double reference = counted(plan).get(0).riseK();

        assertThat(settled - shortfall).isGreaterThan(reference - 2 - 0.05);
        SoakQuestion.Day day = new SoakQuestion.Day("ABA", 5, 300, 1200);
        List<PullStart> fewer = DayOfPulls.follow(new RepeatedPulls(ONE, 6), day, 3, needed - 1);
        assertThat(fewer).filteredOn(pull -> !pull.warmUp()).anySatisfy(pull -> assertThat(Math.abs(pull.riseK() - reference)).isGreaterThan(2));
    }

    @Test
    void aToleranceThatOnePullNeverPassesAsksForNothing() {
        SoakPlan plan = plan(List.of(new Mode(30, 1)), "ABA", 300, 1200, new Sensitivity.InletRule());
        assertThat(plan.warmUpsFirst()).hasValue(0);
        assertThat(plan.warmUpsAfterSwap()).hasValue(0);
    }

    @Test
    void aSlowCarAtAShortIntervalIsNotHeldByAnyNumberLookedFor() {
        SoakPlan plan = plan(List.of(new Mode(100_000, 1)), "ABA", 60, 1200, new Sensitivity.InletRule());
        assertThat(plan.warmUpsFirst()).isEmpty();
        assertThat(plan.warmUpsAfterSwap()).isEmpty();
    }

    /** √(298.15/T) is 0.99172 at 30 °C and 0.97576 at 40 °C (computed from the rule). */
    @Test
    void theInletRuleGivesItsTwoPrintedFigures() {
        Sensitivity rule = new Sensitivity.InletRule();
        assertThat(1 + rule.relativeChange(298.15, 303.15)).isCloseTo(0.99172, within(5e-6));
        assertThat(1 + rule.relativeChange(298.15, 313.15)).isCloseTo(0.97576, within(5e-6));
    }

    /** With −0.2 % a kelvin the bias is −0.002·190 hp times the difference of mean rises; a linear sensitivity lets it be summed by hand. */
    @Test
    void theBiasIsTheDifferenceOfMeanStartTemperaturesTimesTheSensitivity() {
        SoakPlan plan = plan(ONE, "AB", 300, 1200, new Sensitivity.PerKelvin(-0.002));
        double a = mean(plan, 0);
        double b = mean(plan, 1);

        assertThat(plan.bias().relative()).isCloseTo(-0.002 * (b - a), within(1e-12));
        assertThat(Units.HORSEPOWER.differenceFromSi(plan.bias().si().getAsDouble())).isCloseTo(-0.002 * (b - a) * 190, within(1e-9));
        assertThat(plan.bias().shareOfWorthwhile().getAsDouble()).isCloseTo(0.002 * Math.abs(b - a) * 190 / 3, within(1e-9));
        assertThat(plan.gateBias().relative()).isCloseTo(-0.004, within(1e-12));
    }

    @Test
    void theFirstInstallRunsColderWithoutWarmUpsAndAIsFavoured() {
        SoakPlan plan = plan(ONE, "AB", 300, 0, new Sensitivity.InletRule());
        assertThat(plan.biasWithoutWarmUps().relative()).isNegative();
        assertThat(Math.abs(plan.bias().relative())).isLessThan(Math.abs(plan.biasWithoutWarmUps().relative()));
    }

    @Test
    void theClockCountsAsSizeDoes() {
        SoakPlan plan = plan(List.of(new Mode(30, 1)), "ABA", 300, 1200, new Sensitivity.InletRule());
        assertThat(plan.pulls().get(plan.pulls().size() - 1).timeS()).isEqualTo(14 * 300 + 2 * 1200);
    }

    private static SoakPlan plan(List<Mode> modes, String letters, double intervalS, double swapS, Sensitivity sensitivity) {
        return SoakPlanning.plan(modes, new SoakQuestion(6, 2, new SoakQuestion.Day(letters, 5, intervalS, swapS), 298.15, sensitivity, HP),
                OptionalEnds.none());
    }

    private static List<PullStart> counted(SoakPlan plan) {
        return plan.pulls().stream().filter(pull -> !pull.warmUp()).toList();
    }

    private static double mean(SoakPlan plan, int install) {
        return counted(plan).stream().filter(pull -> pull.install() == install).mapToDouble(PullStart::riseK).average().orElseThrow();
    }
}

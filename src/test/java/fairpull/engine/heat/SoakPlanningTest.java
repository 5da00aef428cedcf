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
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoakPlanningTest {
    private static final List<Mode> ONE = List.of(new Mode(540, 1));
    private static final SoakQuestion.Measure HP = new SoakQuestion.Measure(Units.HORSEPOWER,
            OptionalDouble.of(Units.HORSEPOWER.toSi(190)), OptionalDouble.of(Units.HORSEPOWER.toSi(3)));

    /**
     * r∞ = 6/(e^(300/540) − 1) = 8.07 K. Five counted pulls after w warm-ups span 8.07·(e^(−w·300/540) − e^(−(w+4)·300/540)): 2.37 K with
     * two, 1.36 K with three (computed by hand).
     */
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

    /** Fewest pulls of all pairs, each day followed by a simulation of its own; the asymptote would ask for 12 + 4 of the second car. */
    @ParameterizedTest
    @CsvSource({"540, 540, 6, 300, 1200, ABABA, 5", "180, 1800, 8, 300, 1200, ABABA, 5", "150, 840, 7, 300, 1200, ABABA, 5",
        "900, 900, 6, 240, 600, ABBA, 3", "300, 300, 3, 300, 60, A, 8"})
    void noFewerPullsHoldThePlannedDay(double fast, double slow, double rise, double interval, double swap, String order, int pulls) {
        List<Mode> modes = List.of(new Mode(fast, 0.6), new Mode(slow, 0.4));
        SoakQuestion question = new SoakQuestion(rise, 2, new SoakQuestion.Day(order, pulls, interval, swap), 298.15,
                new Sensitivity.InletRule(), HP);

        SoakPlan plan = SoakPlanning.plan(modes, question, OptionalEnds.none());

        int first = plan.warmUpsFirst().orElseThrow();
        int later = plan.warmUpsAfterSwap().orElseThrow();
        int swaps = order.length() - 1;
        assertThat(holds(modes, question, first, later)).isTrue();
        for (int f = 0; f <= first + later * swaps; f++) {
            for (int l = 0; f + l * swaps < first + later * swaps; l++) {
                assertThat(holds(modes, question, f, l)).as("%d + %d", f, l).isFalse();
                if (swaps == 0) {
                    break;
                }
            }
        }
    }

    /** Adds up what every earlier pull has left, each by itself. */
    private static boolean holds(List<Mode> modes, SoakQuestion question, int first, int later) {
        SoakQuestion.Day day = question.day();
        List<Double> times = new ArrayList<>();
        List<Double> counted = new ArrayList<>();
        double time = 0;
        for (int install = 0; install < day.letters().length(); install++) {
            time += install == 0 ? 0 : day.swapS();
            int warm = install == 0 ? first : later;
            for (int pull = 0; pull < warm + day.pulls(); pull++) {
                double now = time;
                if (pull >= warm) {
                    counted.add(times.stream().mapToDouble(before -> modes.stream().mapToDouble(mode -> question.pullRiseK() * mode.share()
                            * Math.exp(-(now - before) / mode.timeConstantS())).sum()).sum());
                }
                times.add(time);
                time += day.intervalS();
            }
        }
        return counted.stream().allMatch(rise -> Math.abs(rise - counted.get(0)) <= question.toleranceK());
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

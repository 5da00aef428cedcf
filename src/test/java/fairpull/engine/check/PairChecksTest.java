package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CheckOutcome;
import fairpull.domain.finding.CheckOutcome.State;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pulls against each other: the same numbers, a multiple, a copied stretch. */
class PairChecksTest {
    private static final List<PullCheck> CHECKS = List.of(new NumbersRepeated(), new PullIsMultiple(), new StretchCopied());

    private static List<CheckOutcome> outcomes(Traces... pulls) {
        List<PullTrace> traces = new ArrayList<>();
        for (int i = 0; i < pulls.length; i++) {
            traces.add(pulls[i].named("A1-" + (i + 1)).trace());
        }
        return CHECKS.stream().map(check -> check.check(traces)).toList();
    }

    private static List<String> names(List<CheckOutcome> outcomes) {
        return outcomes.stream().flatMap(outcome -> outcome.names().stream().map(name -> outcome.code() + " " + name)).toList();
    }

    @Test
    void pullsWithNoiseOfTheirOwnAreClear() {
        Traces[] pulls = new Traces[30];
        for (int i = 0; i < pulls.length; i++) {
            pulls[i] = Traces.sweep(100 + i);
        }

        assertThat(outcomes(pulls)).extracting(CheckOutcome::state).containsOnly(State.CLEAR);
    }

    @Test
    void onePullAloneCannotBeCompared() {
        assertThat(outcomes(Traces.sweep(1))).extracting(CheckOutcome::state).containsOnly(State.NOT_APPLICABLE);
    }

    @Test
    void theSameNumbersWithFewerDecimalsAreTheSame() {
        assertThat(names(outcomes(Traces.sweep(1), Traces.sweep(2), Traces.sweep(1)))).containsExactly("NUMBERS_REPEATED A1-3 = A1-1");
        assertThat(names(outcomes(Traces.sweep(1), Traces.sweep(1).times(Quantity.POWER, 1, 1))))
                .containsExactly("NUMBERS_REPEATED A1-2 = A1-1");
        assertThat(names(outcomes(Traces.sweep(1), Traces.sweep(2).times(Quantity.POWER, 1, 1)))).isEmpty();
    }

    @Test
    void aMultipleIsNamedWithItsFactor() {
        List<CheckOutcome> outcomes = outcomes(Traces.sweep(1), Traces.sweep(1).times(Quantity.POWER, 1.031, 2));

        assertThat(names(outcomes)).containsExactly("PULL_IS_MULTIPLE A1-2 = A1-1");
        assertThat(outcomes.get(1).figures().get(0)).isCloseTo(1.031, within(1e-5));
    }

    @Test
    void aFlatCurveIsAMultipleByChance() {
        assertThat(names(outcomes(flat(100), flat(104)))).isEmpty();
    }

    @Test
    void aStretchCopiedIntoAnotherPullIsNamedWithItsLength() {
        double[] source = Traces.sweep(1).reading(Quantity.POWER);
        Traces target = Traces.sweep(2);
        double[] own = target.reading(Quantity.POWER);
        List<CheckOutcome> outcomes = outcomes(Traces.sweep(1),
                target.put(Quantity.POWER, Units.HORSEPOWER, row -> row >= 150 && row < 170 ? source[row] : own[row]));

        assertThat(names(outcomes)).containsExactly("STRETCH_COPIED A1-2 = A1-1");
        assertThat(outcomes.get(2).figures().get(0)).isEqualTo(20);
    }

    @Test
    void rowsAfterLiftOffThatStandAlikeInEveryPullAreNoCopy() {
        assertThat(names(outcomes(coastingDown(1), coastingDown(2), coastingDown(3)))).isEmpty();
        double[] source = coastingDown(1).reading(Quantity.POWER);
        double[] own = coastingDown(2).reading(Quantity.POWER);
        assertThat(names(outcomes(coastingDown(1), coastingDown(2).put(Quantity.POWER, Units.HORSEPOWER,
                row -> row >= 100 && row < 120 ? source[row] : own[row])))).containsExactly("STRETCH_COPIED A1-2 = A1-1");
        // the same sweep between other rows is a copy however long it is
        assertThat(names(outcomes(coastingDown(1), coastingDown(1).put(Quantity.POWER, Units.HORSEPOWER,
                row -> row > 160 ? -row : source[row])))).containsExactly("STRETCH_COPIED A1-2 = A1-1");
    }

    /** The last 40 rows coast down as in every other pull. */
    private static Traces coastingDown(long seed) {
        double[] power = Traces.sweep(seed).reading(Quantity.POWER);
        double[] speed = Traces.sweep(seed).reading(Quantity.ENGINE_SPEED);
        return Traces.sweep(seed).without(Quantity.TORQUE)
                .put(Quantity.ENGINE_SPEED, Units.RPM, row -> row <= 160 ? speed[row] : speed[160] - 40 * (row - 160))
                .put(Quantity.POWER, Units.HORSEPOWER, row -> row <= 160 ? power[row] : -15 - (row - 160) % 7);
    }

    private static Traces flat(double level) {
        return Traces.sweep(1).without(Quantity.TORQUE).put(Quantity.POWER, Units.HORSEPOWER, row -> level);
    }
}

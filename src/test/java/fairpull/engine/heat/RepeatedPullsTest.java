package fairpull.engine.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.heat.Mode;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Closed forms against textbook figures and against direct simulation of the linear system. */
class RepeatedPullsTest {
    /** Incropera et al., Fundamentals of Heat and Mass Transfer, example 5.1: a bead from 25 °C in gas of 200 °C reaches 199 °C in 5.2 s. */
    @Test
    void thermocoupleBeadOfIncroperaExample51() {
        double timeConstant = sphereTimeConstantS(8500, 400, 7.06e-4, 400);
        RepeatedPulls bead = new RepeatedPulls(List.of(new Mode(timeConstant, 1)), 200 - 25);
        assertThat(bead.coolsWithin(1)).isCloseTo(5.2, within(0.05));
    }

    /** Çengel, Heat Transfer, example 4-1: a sphere of 1 mm (k 35, ρ 8500, c 320, h 210) has taken 99 % of the difference after 10 s. */
    @Test
    void thermocoupleSphereOfCengelExample41() {
        RepeatedPulls sphere = new RepeatedPulls(List.of(new Mode(sphereTimeConstantS(8500, 320, 1e-3, 210), 1)), 1);
        assertThat(sphere.coolsWithin(0.01)).isCloseTo(10, within(0.5));
        assertThat(210 * (1e-3 / 6) / 35).as("Biot number").isLessThan(0.1);
    }

    /** ln 20 (algebra). */
    @Test
    void twentyKelvinFallToOneInAlmostThreeTimeConstants() {
        assertThat(new RepeatedPulls(List.of(new Mode(1, 1)), 20).coolsWithin(1)).isCloseTo(2.996, within(5e-4));
    }

    @Test
    void closedFormsAgreeWithTheSimulatedSystem() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 200; round++) {
            double share = random.nextDouble(0.05, 0.95);
            List<Mode> modes = round % 2 == 0 ? List.of(new Mode(random.nextDouble(10, 3000), 1))
                    : List.of(new Mode(random.nextDouble(10, 300), share), new Mode(random.nextDouble(300, 6000), 1 - share));
            double rise = random.nextDouble(0.5, 40);
            double interval = random.nextDouble(20, 1200);
            RepeatedPulls pulls = new RepeatedPulls(modes, rise);
            double[] left = new double[modes.size()];
            for (int pull = 1; pull <= 2000; pull++) {
                double now = Arrays.stream(left).sum();
                if (pull < 40) {
                    assertThat(pulls.riseBefore(pull, interval)).as("pull %d", pull).isCloseTo(now, within(1e-9 * (1 + now)));
                    assertThat(pulls.shortfall(pull - 1, interval) + now).isCloseTo(pulls.settledRise(interval), within(1e-9 * (1 + now)));
                }
                for (int k = 0; k < left.length; k++) {
                    left[k] = (left[k] + rise * modes.get(k).share()) * Math.exp(-interval / modes.get(k).timeConstantS());
                }
            }
            double settled = Arrays.stream(left).sum();
            assertThat(pulls.settledRise(interval) - pulls.shortfall(2000, interval)).isCloseTo(settled, within(1e-9 * settled));
        }
    }

    /** With one time constant the interval that holds is τ·ln(1 + ΔT/tolerance) (algebra from the settled rise). */
    @Test
    void theIntervalThatHoldsHasItsClosedFormForOneTimeConstant() {
        RepeatedPulls pulls = new RepeatedPulls(List.of(new Mode(540, 1)), 6);
        assertThat(pulls.shortestInterval(0, 2)).isCloseTo(540 * Math.log(1 + 6.0 / 2), within(1e-6));
        assertThat(pulls.shortestInterval(0, 1e9)).isLessThan(1e-3 * 540);
    }

    @Test
    void moreWarmUpsAllowShorterIntervals() {
        RepeatedPulls pulls = new RepeatedPulls(List.of(new Mode(120, 0.6), new Mode(1500, 0.4)), 12);
        double before = Double.POSITIVE_INFINITY;
        for (int warmUps = 0; warmUps < 8; warmUps++) {
            double interval = pulls.shortestInterval(warmUps, 2);
            assertThat(interval).isLessThan(before);
            assertThat(pulls.shortfall(warmUps, interval)).isCloseTo(2, within(1e-9));
            before = interval;
        }
    }

    private static double sphereTimeConstantS(double density, double heatCapacity, double diameter, double heatTransfer) {
        return density * heatCapacity * diameter / 6 / heatTransfer;
    }
}

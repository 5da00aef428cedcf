package fairpull.engine.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.MovingMass;
import fairpull.domain.plan.MovingMass.CoastDown;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Power out of motion against motions whose power is known in closed form. */
class DrivenPowerTest {
    @Test
    void inertiaAtAConstantAccelerationAsFortyCfr1066WorksItOut() {
        // 40 CFR 1066.265: 2967 lbm of inertia at 1 mph/s take 135.25 lbf, which is 14.427 hp at 40 mph (to the digits printed there)
        double mass = Units.POUND.toSi(2967);
        Channels log = new TimeLog(60, 0.1).with(Quantity.SPEED, Units.MILE_PER_HOUR::toSi).channels();
        Samples power = power(log, new MovingMass(mass, 0, 1, Optional.empty()));

        assertThat(Units.HORSEPOWER.fromSi(power.at(400))).isCloseTo(14.427, within(0.0005));
    }

    @Test
    void constantPowerOnARollerIsGivenBack() {
        // P constant: m·v²/2 = P·t + const, so v = √(v0² + 2Pt/m); a roller of J = 12.5 kg·m² and r = 0.25 m is worth 200 kg
        double mass = MovingMass.ofRoller(12.5, 0.25);
        double watts = 90_000;
        Channels log = new TimeLog(8, 0.02).with(Quantity.SPEED, t -> Math.sqrt(400 + 2 * watts * t / 1400)).channels();
        Samples power = power(log, new MovingMass(mass + 1200, 0, 0.4, Optional.empty()));

        assertThat(mass).isEqualTo(200);
        // what a quadratic does not follow of a cubic: 0.6·h²·v‴/6 of slope, over half a window h on either side, or (at the ends) on one;
        // v‴ is largest at the start, 3b³/(8·v0⁵) with b = 2P/m = 128.6 m²/s³: 3.1e-4 of the acceleration there
        for (int row = 0; row < power.size(); row++) {
            assertThat(power.at(row)).isCloseTo(watts, within(3.2e-4 * watts));
        }
    }

    @Test
    void whatIsQuadraticInTimeIsExactUpToBothEndsAndAtUnevenTimes() {
        double[] times = {0, 0.03, 0.11, 0.2, 0.22, 0.35, 0.41, 0.5, 0.58};
        Samples time = Samples.of(times);
        LocalQuadratic fit = LocalQuadratic.of(time, time.map(t -> 3 + 5 * t - 7 * t * t), 0.5);

        for (int row = 0; row < times.length; row++) {
            assertThat(fit.value(row)).isCloseTo(3 + 5 * times[row] - 7 * times[row] * times[row], within(1e-9));
            assertThat(fit.slope(row)).isCloseTo(5 - 14 * times[row], within(1e-8));
        }
        assertThat(LocalQuadratic.of(Samples.of(0, 1, 2), Samples.of(1, 2, 3), 0.5).slope(1)).isNaN();
    }

    @Test
    void coastDownForcesAreAdded() {
        // steady 30 m/s: no inertia, P = (F0 + F1·v + F2·v²)·v = (100 + 2·30 + 0.4·900)·30 = 15 600 W
        Channels log = new TimeLog(5, 0.1).with(Quantity.SPEED, t -> 30).channels();
        MovingMass car = new MovingMass(1500, 15, 0.5, Optional.of(new CoastDown(100, 2, 0.4, 5, 0.3, 0.01)));

        assertThat(power(log, car).at(25)).isCloseTo(15_600, within(1e-6));
        // u(P) = 30·√(5² + (30·0.3)² + (900·0.01)²)
        assertThat(DrivenPower.relativeUncertainty(log, car).orElseThrow())
                .isCloseTo(30 * Math.sqrt(25 + 81 + 81) / 15_600, within(1e-9));
    }

    @Test
    void aMassKnownToOnePercentLeavesPowerKnownToOnePercent() {
        Channels log = new TimeLog(20, 0.1).with(Quantity.SPEED, t -> 10 + 2 * t).channels();

        assertThat(DrivenPower.relativeUncertainty(log, new MovingMass(1500, 15, 0.5, Optional.empty())).orElseThrow())
                .isCloseTo(0.01, within(1e-9));
    }

    @Test
    void firstOrderUncertaintyAgreesWithDrawnMassesAndCoefficients() {
        Channels log = new TimeLog(20, 0.1).with(Quantity.SPEED, t -> 10 + 2 * t).channels();
        MovingMass car = new MovingMass(1500, 20, 0.5, Optional.of(new CoastDown(120, 1, 0.4, 10, 0.4, 0.02)));
        SplittableRandom random = new SplittableRandom(4);
        int draws = 4000;
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < draws; draw++) {
            CoastDown road = new CoastDown(120 + 10 * random.nextGaussian(), 1 + 0.4 * random.nextGaussian(),
                    0.4 + 0.02 * random.nextGaussian(), 0, 0, 0);
            double watts = power(log, new MovingMass(1500 + 20 * random.nextGaussian(), 0, 0.5, Optional.of(road))).at(200);
            sum += watts;
            squares += watts * watts;
        }
        double mean = sum / draws;
        double drawn = Math.sqrt(squares / draws - mean * mean) / mean;

        // the standard deviation of 4000 draws is known to 1/√8000 = 1.1 %; three times that
        assertThat(DrivenPower.relativeUncertainty(log, car).orElseThrow()).isCloseTo(drawn, within(0.034 * drawn));
    }

    @Test
    void measuredPowerIsNeverReplacedAndWithoutSpeedThereIsNone() {
        MovingMass mass = new MovingMass(1500, 0, 0.5, Optional.empty());
        Channels measured = new TimeLog(2, 0.1).with(Quantity.SPEED, t -> t).with(Quantity.TORQUE, t -> 1).channels();
        Channels still = new TimeLog(2, 0.1).with(Quantity.ENGINE_SPEED, t -> t).channels();

        assertThat(DrivenPower.added(measured, mass)).isSameAs(measured);
        assertThat(DrivenPower.added(still, mass)).isSameAs(still);
    }

    private static Samples power(Channels log, MovingMass mass) {
        return DrivenPower.added(log, mass).find(Quantity.POWER).orElseThrow();
    }
}

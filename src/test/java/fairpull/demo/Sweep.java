package fairpull.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Runs one pull on an invented inertia rig: part throttle, throttle opened, engine speed rising with torque, throttle closed, speed falling.
 * Integrated at 200 Hz, read at 40 Hz with the noise of the sensors.
 */
final class Sweep {
    private static final double STEP_S = 0.005;
    private static final int STEPS_A_READING = 5;
    private static final double RUN_IN_S = 1.4;
    private static final double COAST_S = 1.5;
    private static final double PART_THROTTLE = 0.22;
    private static final double THROTTLE_LAG_S = 0.06;
    private static final double TORQUE_LAG_S = 0.13;
    private static final double DRAG_NM = 24;
    private static final double COAST_RPM_PER_S = 260;
    private static final double SPEED_NOISE_RPM = 4;
    private static final double TORQUE_NOISE = 0.006;
    private static final double WAVE = 0.004;
    private static final double STUCK = 0.012;

    private final TorqueCurve curve;
    private final Scenario.Driving driving;
    private final boolean partB;
    private final double factor;
    private final SplittableRandom noise;
    private final double wavePhase;
    private final double liftRpm;
    private double rpm;
    private double throttle = PART_THROTTLE;
    private double load = PART_THROTTLE;

    Sweep(TorqueCurve curve, Scenario.Driving driving, boolean partB, double factor, SplittableRandom noise) {
        this.curve = curve;
        this.driving = driving;
        this.partB = partB;
        this.factor = factor;
        this.noise = noise;
        this.wavePhase = noise.nextDouble(2 * Math.PI);
        this.liftRpm = driving.liftRpm() + 25 * noise.nextGaussian();
        this.rpm = driving.fromRpm() + 15 * noise.nextGaussian();
    }

    /**
     * What the rig reads at one instant.
     *
     * @param seconds since recording began
     * @param engineRpm engine speed, possibly the same as before or a little lower: sensors are noisy and sometimes stick
     * @param rollerKmh speed of the roller
     * @param throttle opening, 0 to 1
     * @param torqueNm torque
     */
    record Reading(double seconds, double engineRpm, double rollerKmh, double throttle, double torqueNm) {
    }

    /** {@return the readings in order of time; a sweep is run once} */
    List<Reading> run() {
        List<Reading> readings = new ArrayList<>();
        double liftedAt = Double.POSITIVE_INFINITY;
        for (int step = 0; step * STEP_S < liftedAt + COAST_S; step++) {
            double seconds = step * STEP_S;
            if (rpm >= liftRpm && Double.isInfinite(liftedAt)) {
                liftedAt = seconds;
            }
            boolean lifted = seconds >= liftedAt;
            double wanted = lifted ? 0 : seconds < RUN_IN_S ? PART_THROTTLE : 1;
            throttle += (wanted - throttle) * STEP_S / THROTTLE_LAG_S;
            load += (throttle - load) * STEP_S / TORQUE_LAG_S;
            if (step % STEPS_A_READING == 0) {
                readings.add(read(seconds, readings));
            }
            rpm += STEP_S * rise(seconds < RUN_IN_S, lifted);
        }
        return readings;
    }

    private double rise(boolean runIn, boolean lifted) {
        double free = driving.rpmPerSecond() * torqueNm() / curve.peakNm();
        return runIn ? 0.3 * free : lifted ? Math.min(free, 0) - COAST_RPM_PER_S : free;
    }

    private double torqueNm() {
        double wave = 1 + WAVE * Math.sin(2 * Math.PI * rpm / 870 + wavePhase);
        return load * factor * wave * curve.torqueNm(rpm, partB) - (1 - load) * DRAG_NM;
    }

    private Reading read(double seconds, List<Reading> before) {
        double engineRpm = rpm + SPEED_NOISE_RPM * noise.nextGaussian();
        if (!before.isEmpty() && noise.nextDouble() < STUCK) {
            engineRpm = before.get(before.size() - 1).engineRpm();
        }
        double torque = torqueNm() * (1 + TORQUE_NOISE * noise.nextGaussian());
        double roller = rpm * driving.kmhPerRpm() * (1 + 0.0008 * noise.nextGaussian());
        double opening = Math.min(1, Math.max(0, throttle + 0.002 * noise.nextGaussian()));
        return new Reading(seconds, engineRpm, roller, opening, torque);
    }
}

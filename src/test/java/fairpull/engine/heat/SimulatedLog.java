package fairpull.engine.heat;

import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.pull.Samples;
import java.util.Random;

/** Cool-downs with known constants and seeded noise; carry is how much of a reading's error goes over into the next. */
record SimulatedLog(double ambientK, double[] amplitudesK, double[] timeConstantsS, double noiseK, double carry) {
    static SimulatedLog single(double noiseK) {
        return new SimulatedLog(295.15, new double[] {30}, new double[] {540}, noiseK, 0);
    }

    static SimulatedLog twofold(double noiseK) {
        return new SimulatedLog(295.15, new double[] {20, 15}, new double[] {150, 1500}, noiseK, 0);
    }

    CoolDownLog draw(int readings, double spacingS, Random random) {
        double[] times = new double[readings];
        double[] temperatures = new double[readings];
        double error = random.nextGaussian() * noiseK;
        for (int i = 0; i < readings; i++) {
            times[i] = i * spacingS;
            temperatures[i] = ambientK + error;
            for (int k = 0; k < amplitudesK.length; k++) {
                temperatures[i] += amplitudesK[k] * Math.exp(-times[i] / timeConstantsS[k]);
            }
            error = carry * error + Math.sqrt(1 - carry * carry) * random.nextGaussian() * noiseK;
        }
        return new CoolDownLog(Samples.of(times), Samples.of(temperatures), "Intake Air", 1);
    }
}

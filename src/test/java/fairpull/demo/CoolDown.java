package fairpull.demo;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.SplittableRandom;

/** An invented cool-down after one pull: two time constants, a sensor that reads to a tenth of a degree. */
record CoolDown(long seed, double ambientC, double quickK, double quickS, double slowK, double slowS) {
    static final CoolDown INTAKE_AIR = new CoolDown(1, 22, 4.2, 150, 2.8, 840);
    private static final int READINGS = 271;
    private static final int SPACING_S = 10;
    private static final double NOISE_K = 0.08;

    /** {@return the log as a file} */
    byte[] export() {
        SplittableRandom noise = new SplittableRandom(seed);
        StringBuilder text = new StringBuilder("Time (s),Intake Air (°C)\r\n");
        for (int i = 0; i < READINGS; i++) {
            double t = i * (double) SPACING_S;
            // StrictMath: the same bytes on every Java
            double celsius = ambientC + quickK * StrictMath.exp(-t / quickS) + slowK * StrictMath.exp(-t / slowS) + NOISE_K * normal(noise);
            text.append(i * SPACING_S).append(',').append(String.format(Locale.ROOT, "%.1f", celsius)).append("\r\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Nearly normal: the sum of twelve uniform numbers, which every Java adds up alike. */
    private static double normal(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }
}

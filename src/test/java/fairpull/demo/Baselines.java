package fairpull.demo;

import java.time.LocalDate;
import java.util.SplittableRandom;

/**
 * Baselines of the three-litre saloon, all invented: nine days of two or three installs with three pulls, strapped down anew each time.
 * Mean 192 hp; pull scatter 0.6 %, refit scatter 0.5 %, day scatter 0.3 %.
 */
final class Baselines {
    private static final double LEVEL_HP = 192;
    private static final long SEED = 1;
    private static final int[] INSTALLS = {2, 3, 2, 2, 3, 2, 3, 2, 2};

    private Baselines() {
    }

    static String table() {
        return table(SEED);
    }

    static String table(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder table = new StringBuilder("session,install,pull,value\n");
        LocalDate date = LocalDate.of(2026, 1, 12);
        for (int installs : INSTALLS) {
            double day = 0.003 * random.nextGaussian();
            for (int install = 1; install <= installs; install++) {
                double refit = 0.005 * random.nextGaussian();
                for (int pull = 1; pull <= 3; pull++) {
                    double value = LEVEL_HP * (1 + day + refit + 0.006 * random.nextGaussian());
                    table.append(date).append(",A").append(install).append(',').append(pull).append(',').append(Decimals.fixed(value, 1))
                            .append('\n');
                }
            }
            date = date.plusDays(random.nextInt(5, 12));
        }
        return table.toString();
    }
}

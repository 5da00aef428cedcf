package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RandomisationTest {
    /** Tomato plants, Box, Hunter and Hunter, Statistics for Experimenters: 154 of 462 one-sided; 305 two-sided computed with R. */
    @Test
    void tomatoPlants() {
        double[] pounds = {29.9, 11.4, 26.6, 23.7, 25.3, 28.5, 14.2, 17.9, 16.5, 21.1, 24.3};
        boolean[] isB = {false, false, true, true, false, true, true, true, false, false, true};
        Randomisation found = Randomisation.of(new int[11], isB, pounds);
        assertThat(found.orders()).isEqualTo(462);
        assertThat(found.exact()).isTrue();
        assertThat(found.pValue()).isCloseTo(305.0 / 462, offset(1e-15));
    }

    /** Boys' shoes, same book: 14 of 1024 sign changes are at least as extreme; a boy is a session with one A and one B. */
    @Test
    void shoesExchangedWithinEachBoy() {
        double[] a = {13.2, 8.2, 10.9, 14.3, 10.7, 6.6, 9.5, 10.8, 8.8, 13.3};
        double[] b = {14.0, 8.8, 11.2, 14.2, 11.8, 6.4, 9.8, 11.3, 9.3, 13.6};
        int[] boy = new int[20];
        boolean[] isB = new boolean[20];
        double[] wear = new double[20];
        for (int i = 0; i < 10; i++) {
            boy[2 * i] = boy[2 * i + 1] = i;
            isB[2 * i + 1] = true;
            wear[2 * i] = a[i];
            wear[2 * i + 1] = b[i];
        }
        Randomisation found = Randomisation.of(boy, isB, wear);
        assertThat(found.orders()).isEqualTo(1024);
        assertThat(found.pValue()).isCloseTo(14.0 / 1024, offset(1e-15));
    }

    @Test
    void leastPValues() {
        assertThat(least("ABABA")).isCloseTo(0.1, offset(1e-15));
        assertThat(least("ABBA")).isCloseTo(1 / 3.0, offset(1e-15));
        assertThat(least("ABA")).isCloseTo(1 / 3.0, offset(1e-15));
        assertThat(least("ABA|BAB")).isCloseTo(1 / 9.0, offset(1e-15));
        assertThat(least("AB|BA|AB")).isCloseTo(2 / 8.0, offset(1e-15));
    }

    private static double least(String order) {
        int units = order.replace("|", "").length();
        int[] session = new int[units];
        boolean[] isB = new boolean[units];
        int unit = 0;
        int current = 0;
        for (char letter : order.toCharArray()) {
            if (letter == '|') {
                current++;
            } else {
                session[unit] = current;
                isB[unit++] = letter == 'B';
            }
        }
        return Randomisation.leastPValue(session, isB);
    }

    /** Past a million orders they are drawn; 24 units have 2.7 million, and the exact share is known for a rank-like pattern. */
    @Test
    void drawsWhereThereAreTooManyToCount() {
        Random random = new Random(7);
        double[] values = random.doubles(24).toArray();
        boolean[] isB = new boolean[24];
        for (int i = 0; i < 24; i += 2) {
            isB[i] = true;
        }
        Randomisation found = Randomisation.of(new int[24], isB, values);
        assertThat(found.exact()).isFalse();
        assertThat(found.orders()).isEqualTo(Randomisation.DRAWN);
        assertThat(found.pValue()).isCloseTo(exactShare(values, isB), offset(4 * Math.sqrt(0.25 / Randomisation.DRAWN)));
        assertThat(Randomisation.of(new int[24], isB, values)).isEqualTo(found);
    }

    private static double exactShare(double[] values, boolean[] isB) {
        double total = 0;
        double observed = 0;
        for (int i = 0; i < 24; i++) {
            total += values[i];
            observed += isB[i] ? values[i] : 0;
        }
        double least = Math.abs(observed - total / 2) - 1e-12;
        long all = 0;
        long asLarge = 0;
        for (int mask = 0; mask < 1 << 24; mask++) {
            if (Integer.bitCount(mask) == 12) {
                double sum = 0;
                for (int rest = mask; rest != 0; rest &= rest - 1) {
                    sum += values[Integer.numberOfTrailingZeros(rest)];
                }
                all++;
                asLarge += Math.abs(sum - total / 2) >= least ? 1 : 0;
            }
        }
        return (double) asLarge / all;
    }
}

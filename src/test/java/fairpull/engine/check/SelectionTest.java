package fairpull.engine.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Medians without sorting are those of sorting ({@link Arrays#sort(double[])}), to the last bit. */
class SelectionTest {
    private static void assertAsSorted(int n, IntToDoubleFunction value) {
        double[] values = new double[n];
        Arrays.setAll(values, value);
        double[] sorted = values.clone();
        Arrays.sort(sorted);

        assertThat(Selection.median(values, n)).isEqualTo((sorted[(n - 1) / 2] + sorted[n / 2]) / 2);
    }

    @Test
    void noiseOfEveryLengthAndWithManyEqualValues() {
        SplittableRandom random = new SplittableRandom(3);
        for (int n = 1; n < 300; n++) {
            assertAsSorted(n, i -> random.nextGaussian());
            assertAsSorted(n, i -> random.nextInt(4));
            assertAsSorted(n, i -> random.nextInt(2) == 0 ? Double.POSITIVE_INFINITY : -i);
        }
    }

    @Test
    void orderedAndConstant() {
        for (int n = 1; n < 100; n++) {
            int last = n;
            assertAsSorted(n, i -> i);
            assertAsSorted(n, i -> last - i);
            assertAsSorted(n, i -> 7);
        }
    }

    @Test
    void ofNothingThereIsNone() {
        assertThat(Selection.median(new double[0], 0)).isNaN();
    }
}

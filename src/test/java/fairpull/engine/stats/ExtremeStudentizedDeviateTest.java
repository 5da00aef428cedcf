package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The example of Rosner (1983) as in the NIST e-Handbook 1.3.5.17.3: data, critical values and the answer from memory. */
class ExtremeStudentizedDeviateTest {
    private static final double[] ROSNER = {-0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58,
        1.65, 1.69, 1.70, 1.76, 1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40, 2.47,
        2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01};

    @Test
    void rosnersExample() {
        assertThat(ROSNER).hasSize(54);
        assertThat(ExtremeStudentizedDeviate.outliers(ROSNER, 10, 0.05)).containsExactly(53, 52, 51);
    }

    @Test
    void criticalValues() {
        assertThat(ExtremeStudentizedDeviate.criticalValue(54, 1, 0.05)).isCloseTo(3.158, within(0.0011));
        assertThat(ExtremeStudentizedDeviate.criticalValue(54, 2, 0.05)).isCloseTo(3.151, within(0.0011));
        assertThat(ExtremeStudentizedDeviate.criticalValue(54, 3, 0.05)).isCloseTo(3.143, within(0.0011));
    }

    /** The first step is Grubbs' test: two-sided 5 % for 5, 6 and 10 values (Grubbs 1969, tables from memory). */
    @Test
    void firstStepIsGrubbs() {
        assertThat(ExtremeStudentizedDeviate.criticalValue(10, 1, 0.05)).isCloseTo(2.290, within(0.0005));
        assertThat(ExtremeStudentizedDeviate.criticalValue(6, 1, 0.05)).isCloseTo(1.887, within(0.0005));
        assertThat(ExtremeStudentizedDeviate.criticalValue(5, 1, 0.05)).isCloseTo(1.715, within(0.0005));
    }

    @Test
    void aSecondOutlierDoesNotHideTheFirst() {
        // one by one neither of the two would be seen: together they widen the standard deviation
        double[] values = {0, 1, -1, 0.5, -0.5, 0.3, -0.3, 0.8, -0.8, 0.1, 9, 9.2};
        assertThat(ExtremeStudentizedDeviate.outliers(values, 1, 0.05)).isEmpty();
        assertThat(ExtremeStudentizedDeviate.outliers(values, 2, 0.05)).containsExactlyInAnyOrder(10, 11);
    }

    @Test
    void findsNothingWhereNothingCanBeFound() {
        assertThat(ExtremeStudentizedDeviate.outliers(new double[] {1, 2}, 1, 0.05)).isEmpty();
        assertThat(ExtremeStudentizedDeviate.outliers(new double[] {1, 1, 1, 1}, 1, 0.05)).isEmpty();
        assertThat(ExtremeStudentizedDeviate.outliers(new double[0], 1, 0.05)).isEmpty();
    }
}

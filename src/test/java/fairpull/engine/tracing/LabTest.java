package fairpull.engine.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabTest {
    /** The primaries of sRGB in CIELAB (D65), as commonly tabulated to three decimals; from memory. */
    @ParameterizedTest
    @CsvSource({"FF0000, 53.241, 80.092, 67.203", "00FF00, 87.735, -86.183, 83.179", "0000FF, 32.297, 79.188, -107.860",
        "FFFFFF, 100, 0, 0", "000000, 0, 0, 0"})
    void primariesAreWhereTablesHaveThem(String rgb, double lightness, double a, double b) {
        Lab lab = Lab.of(Integer.parseInt(rgb, 16));
        assertThat(lab.lightness()).isCloseTo(lightness, within(0.01));
        assertThat(lab.a()).isCloseTo(a, within(0.02));
        assertThat(lab.b()).isCloseTo(b, within(0.02));
    }

    @Test
    void distancesAreEuclidean() {
        assertThat(new Lab(50, 3, 0).distance(new Lab(50, 0, 4))).isEqualTo(5);
    }
}

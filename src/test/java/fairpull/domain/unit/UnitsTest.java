package fairpull.domain.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {
    /** Standard gravity is 9.80665 m/s² exactly (3rd CGPM, 1901; SI brochure), so a kilogram-force metre is 9.80665 N·m exactly. */
    @ParameterizedTest
    @ValueSource(strings = {"kgf·m", "kgfm", "kgf-m", "KGFM", "kg·m", "kgm", "mkg"})
    void aKilogramForceMetreIsExact(String name) {
        assertThat(Units.find(name)).contains(Units.KILOGRAM_FORCE_METRE);
        assertThat(Units.KILOGRAM_FORCE_METRE.toSi(1)).isEqualTo(9.80665);
    }

    @ParameterizedTest
    @CsvSource({"krpm,7.2,7200", "rpm×1000,6.5,6500"})
    void thousandsOfRevolutionsAreThousands(String name, double typed, double rpm) {
        assertThat(Units.RPM.fromSi(Units.find(name).orElseThrow().toSi(typed))).isCloseTo(rpm, within(1e-9));
    }
}

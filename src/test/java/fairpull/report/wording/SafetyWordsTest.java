package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.plan.Rig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SafetyWordsTest {
    /**
     * 29 CFR 1910.95, table G-16: 90 dBA 8 h, 95 dBA 4 h, 100 dBA 2 h, 105 dBA 1 h, 110 dBA 1/2 h, 115 dBA 1/4 h or less. NIOSH, Pocket Guide:
     * carbon monoxide 35 ppm, ceiling 200 ppm, immediately dangerous 1200 ppm. 29 CFR 1910.1000, table Z-1: 50 ppm.
     */
    @ParameterizedTest
    @EnumSource
    void everyKindOfRigHasTheFigures(Rig.Kind kind) {
        String all = SafetyWords.of(kind).toString();

        assertThat(all).contains("8 h at 90 dBA, 4 h at 95, 2 h at 100, 1 h at 105, 30 min at 110, 15 min at 115", "29 CFR 1910.95",
                "15 min at 100 dBA", "35 ppm", "200 ppm (NIOSH)", "50 ppm over 8 h (OSHA)", "1200 ppm", "never indoors without extraction",
                "ear and eye protection", "xtinguisher at hand", "Restraints", "obody");
        assertThat(SafetyWords.deferral()).contains("Local codes", "licensed practice come first");
    }

    @ParameterizedTest
    @EnumSource
    void theCautionsOfTheDayAreShortAndDefer(Rig.Kind kind) {
        String all = SafetyWords.onTheDay(kind);
        assertThat(all).contains("full throttle", "can kill", "before each", "nobody", "ear and eye protection", "hot parts", "extinguisher",
                "Local codes", "licensed practice come first", "If in doubt, do not run").hasSizeLessThan(420);
        boolean indoors = kind != Rig.Kind.ROAD && kind != Rig.Kind.STRIP;
        assertThat(all.contains("carbon monoxide") && all.contains("extraction running")).isEqualTo(indoors);
    }

    /** DHHS (NIOSH) 98-126, table 1-1: 85 dBA 8 h, 88 dBA 4 h, 94 dBA 1 h, 100 dBA 15 min, 103 dBA 7 min 30 s (from memory). */
    @Test
    void noiseByTheRuleOfThreeDecibels() {
        assertThat(SafetyWords.nioshMinutes(85)).isEqualTo(480);
        assertThat(SafetyWords.nioshMinutes(88)).isEqualTo(240);
        assertThat(SafetyWords.nioshMinutes(94)).isEqualTo(60);
        assertThat(SafetyWords.nioshMinutes(100)).isEqualTo(15);
        assertThat(SafetyWords.nioshMinutes(103)).isCloseTo(7.5, within(1e-12));
    }

    @Test
    void rollersHaveTheirOwnCautions() {
        assertThat(SafetyWords.of(Rig.Kind.ROLLER_BRAKE).toString()).contains("rear tether first on and last off", "inspect every strap",
                "nobody in the cell during a pull", "no steering and no braking");
    }
}

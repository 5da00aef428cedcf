package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;
import java.util.stream.Stream;

/** Contrast as WCAG 2.1 asks for: 4.5 for text (success criterion 1.4.3), 3 for what carries meaning in charts (1.4.11). */
class PaletteTest {
    static Stream<Palette> palettes() {
        return Stream.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void textIsLegibleOnCardAndPaper(Palette palette) {
        for (Role role : new Role[] {Role.INK, Role.SOFT, Role.A, Role.B, Role.GATE}) {
            assertThat(palette.contrast(role, Role.CARD)).as(role + " on card").isGreaterThanOrEqualTo(4.5);
        }
        for (Role role : new Role[] {Role.INK, Role.SOFT}) {
            assertThat(palette.contrast(role, Role.PAPER)).as(role + " on paper").isGreaterThanOrEqualTo(4.5);
        }
    }

    /** Of the window: the message beside the path, a step of the path and the usual button in solid ink, and what is said or asked in place. */
    @ParameterizedTest
    @MethodSource("palettes")
    void textOfTheWindowIsLegibleOnItsGround(Palette palette) {
        assertThat(palette.contrast(Role.B, Role.PAPER)).as("message on paper").isGreaterThanOrEqualTo(4.5);
        assertThat(palette.contrast(Role.CARD, Role.INK)).as("chosen step and usual button").isGreaterThanOrEqualTo(4.5);
        assertThat(palette.contrast(Role.INK, Role.B_FILL)).as("banner").isGreaterThanOrEqualTo(4.5);
    }

    /** Without colour, on a copier, the two parts are a dark and a lighter grey; hatching and letter say it besides. No source for 1.5. */
    @ParameterizedTest
    @MethodSource("palettes")
    void partsAreToldApartInGrey(Palette palette) {
        assertThat(palette.contrast(Role.A, Role.B)).isGreaterThanOrEqualTo(1.5);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void labelsAreLegibleOnTheirOwnGround(Palette palette) {
        assertThat(palette.contrast(Role.B, Role.B_FILL)).isGreaterThanOrEqualTo(4.5);
        assertThat(palette.contrast(Role.GATE, Role.GATE_FILL)).isGreaterThanOrEqualTo(3);
        assertThat(palette.contrast(Role.B, Role.GATE_FILL)).isGreaterThanOrEqualTo(3);
        assertThat(palette.contrast(Role.INK, Role.GATE_FILL)).isGreaterThanOrEqualTo(4.5);
    }

    /** WCAG 2.1, definition of contrast ratio: black on white is 21; #767676 on white is the well-known 4.54 (from memory). */
    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(Palette.PRINT.contrast(Role.INK, Role.CARD)).isCloseTo(21, within(1e-9));
        assertThat(Palette.contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
    }

    @Test
    void everyRoleHasItsColourInEveryTheme() {
        String sheet = Palette.styleSheet();
        for (Role role : Role.values()) {
            assertThat(sheet.split("--" + role.token() + ":", -1)).as(role.token()).hasSize(4);
            assertThat(sheet).contains(".f-" + role.token() + "{", ".s-" + role.token() + "{");
        }
    }
}

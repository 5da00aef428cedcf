package fairpull.domain.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.unit.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Findings hold the figures that their code names, and tell them by name. */
class FoundTest {
    @Test
    void aFindingHasTheFiguresOfItsCodeAndNoOthers() {
        Found plateau = Found.of("power", Side.AFTER, Units.HORSEPOWER).with(FoundFigure.POINTS, 4);

        assertThatIllegalArgumentException().isThrownBy(() -> AuditCheck.of(Code.CURVE_PLATEAU, List.of(plateau)));
        assertThatIllegalArgumentException().isThrownBy(() -> AuditCheck.of(Code.CURVE_STRETCH_COPIED,
                List.of(plateau.with(FoundFigure.VALUE, 1))));
        assertThatIllegalArgumentException().isThrownBy(() -> plateau.told(FoundFigure.VALUE));
        assertThat(AuditCheck.of(Code.CURVE_STRETCH_COPIED, List.of(plateau)).state()).isEqualTo(AuditCheck.State.RAISED);
    }

    /** One mechanical horsepower is 550 ft·lbf/s, 745.69987 W; 0 °C are 273.15 K. */
    @Test
    void figuresAreToldInTheUnitOfTheFindingAndSpeedsInRpm() {
        Found hot = Found.of("oil", Side.BOTH, Units.find("°C").orElseThrow()).with(FoundFigure.PRINTED, 373.15)
                .with(FoundFigure.ALLOWED, 0.5).with(FoundFigure.SPEED, 100 * Math.PI).with(FoundFigure.RATIO, 1.01);

        assertThat(hot.told(FoundFigure.PRINTED)).isCloseTo(100, within(1e-9));
        assertThat(hot.told(FoundFigure.ALLOWED)).isEqualTo(0.5);
        assertThat(hot.told(FoundFigure.SPEED)).isCloseTo(3000, within(1e-9));
        assertThat(hot.told(FoundFigure.RATIO)).isEqualTo(1.01);
        assertThat(Found.of("power", Side.BOTH, Units.HORSEPOWER).with(FoundFigure.ADDS, 745.69987).told(FoundFigure.ADDS))
                .isCloseTo(1, within(1e-7));
    }

    /** In a file a key stands once. */
    @ParameterizedTest
    @EnumSource(Code.class)
    void theFiguresOfACodeHaveNamesOfTheirOwn(Code code) {
        assertThat(code.figures()).extracting(FoundFigure::key).doesNotHaveDuplicates().allMatch(key -> key.matches("[a-z][A-Za-z]+"));
    }
}

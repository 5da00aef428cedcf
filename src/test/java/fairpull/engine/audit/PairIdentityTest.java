package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.IdentityOfFigures;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Printed;
import fairpull.domain.plan.Correction;
import org.junit.jupiter.api.Test;

class PairIdentityTest {
    /** hp = lbf·ft × rpm ÷ 5252 (550 × 60 ÷ 2π = 5252.1): equal numbers meet there. */
    @Test
    void holdsWithinTheRoundingOfThePrintedFigures() {
        IdentityOfFigures equal = identity("200.0 hp", "200.0 lb-ft", "5252 rpm");
        IdentityOfFigures off = identity("203.0 hp", "200.0 lb-ft", "5252 rpm");
        IdentityOfFigures coarse = identity("203 hp", "202 lb-ft", "5252 rpm");

        assertThat(equal.holds()).isTrue();
        assertThat(equal.ratio()).isCloseTo(1, within(3e-5));
        assertThat(off.holds()).isFalse();
        assertThat(off.mixUp()).isEmpty();
        assertThat(coarse.holds()).isTrue();
    }

    @Test
    void namesTheUnitThatWasMixedUp() {
        assertThat(identity("149.1 hp", "200.0 lb-ft", "5252 rpm").mixUp()).isEqualTo("hp → kW");
        assertThat(identity("200.0 hp", "200.0 N·m", "5252 rpm").mixUp()).isEqualTo("N·m → lbf·ft");
    }

    /** SAE J607's reference is 29.92 inHg of dry air at 60 °F, SAE J1349's 990 hPa at 25 °C: (1013.2 ÷ 990)·√(537 ÷ 520) = 1.040. */
    @Test
    void fourPercentIsWhatTwoStandardsGive() {
        assertThat(MixedStandards.apparentGain(Correction.SAE_J1349, Correction.SAE_J607, MixedStandards.REFERENCE))
                .isCloseTo(0.040, within(0.0005));
        assertThat(MixedStandards.all(MixedStandards.REFERENCE)).hasSize(30).isSortedAccordingTo(
                (one, other) -> Double.compare(other.apparentGain(), one.apparentGain()));
        assertThat(MixedStandards.nearest(0.04, BeforeAfter.notDisclosed(), MixedStandards.REFERENCE).orElseThrow().after()).isEqualTo(Correction.SAE_J607);
    }

    private static IdentityOfFigures identity(String power, String torque, String speed) {
        return PairIdentity.of(Printed.parse(power).orElseThrow(), Printed.parse(torque).orElseThrow(),
                Printed.parse(speed).orElseThrow());
    }
}

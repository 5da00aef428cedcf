package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Units;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What air may make of an unchanged car, reckoned by hand from SAE J1349, 1.18·(990 hPa ÷ p_dry)·√(T ÷ 298.15 K) − 0.18, and from the
 * pressure of the U.S. Standard Atmosphere (1976), 977.7 hPa at 300 m and 835.2 hPa at 1600 m.
 */
class RangeOfAirTest {
    /**
     * At 300 m thin air is 953.3 hPa less 28 hPa of vapour at 308.15 K: 1.1035; dense air 1002.2 hPa less 5 hPa at 278.15 K: 0.9515; one
     * through the other 1.1597.
     */
    @Test
    void figuresOfTwoDaysThatAreNotCorrectedMayBeAsFarApartAsTheirAir() {
        assertThat(RangeOfAir.of(Procedure.notDisclosed()).uncorrected()).isCloseTo(0.1597, within(5e-4));
    }

    /** 835.2 hPa at 1600 m (U.S. Standard Atmosphere 1976); the reference of SAE J1349 where nothing is said. */
    @Test
    void standardsAreMixedInTheAirOfTheElevation() {
        Procedure high = Procedure.notDisclosed().with(new Correcting(BeforeAfter.notDisclosed(), BeforeAfter.notDisclosed(),
                Optional.of(new Printed(1600, 0, Units.METRE))));

        assertThat(RangeOfAir.usual(high).pressurePa()).isCloseTo(83_520, within(10.0));
        assertThat(RangeOfAir.usual(Procedure.notDisclosed())).isEqualTo(MixedStandards.REFERENCE);
    }

    /** At 1600 m thin air is 814.3 hPa less 28 hPa: 1.18·(990 ÷ 786.3)·1.016632 − 0.18 = 1.3304. */
    @Test
    void anUncorrectedFigureBeforeACorrectedOneGainsByTheElevation() {
        Procedure high = Procedure.notDisclosed().with(new Correcting(new BeforeAfter<>(Optional.empty(), Optional.of(Correction.SAE_J1349)),
                BeforeAfter.notDisclosed(), Optional.of(new Printed(1600, 0, Units.METRE))));

        assertThat(Assumptions.worst(high, ScatterShares.MOST, 3).shifts().standards())
                .isCloseTo(0.3304, within(1e-3));
    }
}

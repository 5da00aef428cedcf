package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.unit.UnitSystem;
import fairpull.domain.unit.Units;
import org.junit.jupiter.api.Test;

/** 9 °F are 5 K and 0 °C is 32 °F; one psi is 6.894757 kPa (NIST SP 811, appendix B.8); roundings by hand. */
class GateWordsTest {
    private static final GateWords METRIC = new GateWords(UnitSystem.METRIC);
    private static final GateWords US = new GateWords(UnitSystem.US);

    @Test
    void differencesOfTemperatureAreConvertedWithoutTheZero() {
        Gate gate = new Gate(Condition.INTAKE_AIR, new Gate.NearReference(2));

        assertThat(plain(METRIC.limit(gate, "A1-1"))).isEqualTo("within ± 2 K of A1-1");
        assertThat(plain(US.limit(gate, "A1-1"))).isEqualTo("within ± 3.6 °F of A1-1");
        assertThat(plain(US.brief(gate, "A1-1"))).isEqualTo("A1-1 ± 3.6");
    }

    @Test
    void windowsAreConvertedWithTheZero() {
        Gate gate = new Gate(Condition.COOLANT, new Gate.Window(Units.CELSIUS.toSi(80), Units.CELSIUS.toSi(95)));

        assertThat(plain(METRIC.limit(gate, "A1-1"))).isEqualTo("80 to 95 °C");
        assertThat(plain(US.limit(gate, "A1-1"))).isEqualTo("176 to 203 °F");
        assertThat(plain(US.brief(gate, "A1-1"))).isEqualTo("176 – 203");
    }

    @Test
    void roundingNeverLoosensALimit() {
        Gate tyres = new Gate(Condition.TYRE_PRESSURE, new Gate.NearReference(Units.POUND_PER_SQUARE_INCH.differenceToSi(0.5)));
        assertThat(plain(METRIC.limit(tyres, "A1-1"))).as("0.03447 bar").isEqualTo("within ± 0.034 bar of A1-1");
        assertThat(plain(US.limit(tyres, "A1-1"))).isEqualTo("within ± 0.5 psi of A1-1");

        Gate coolant = new Gate(Condition.COOLANT, new Gate.Window(355, 365));
        assertThat(plain(US.limit(coolant, "A1-1"))).as("179.33 to 197.33 °F").isEqualTo("179.4 to 197.3 °F");

        for (double tolerance = 0.013; tolerance < 40; tolerance *= 1.37) {
            String words = plain(US.brief(new Gate(Condition.OIL, new Gate.NearReference(tolerance)), "A1-1"));
            double printed = Double.parseDouble(words.substring(words.indexOf('±') + 2));
            assertThat(printed).as("%s K", tolerance).isPositive().isBetween(tolerance * 1.8 * 0.9, tolerance * 1.8 + 1e-9);
        }
    }

    @Test
    void aWindowNarrowerThanAGaugeShowsKeepsItsEnds() {
        Gate gate = new Gate(Condition.BAROMETER, new Gate.Window(101_302, 101_304));

        assertThat(plain(METRIC.limit(gate, "A1-1"))).isEqualTo("1013.02 to 1013.04 hPa");
    }

    @Test
    void coldLimitsHaveATrueMinus() {
        Gate gate = new Gate(Condition.INTAKE_AIR, new Gate.Window(Units.CELSIUS.toSi(-5), Units.CELSIUS.toSi(5)));

        assertThat(plain(METRIC.limit(gate, "A1-1"))).isEqualTo("−5 to 5 °C");
    }

    private static String plain(String words) {
        return words.replace(Numbers.THIN, " ");
    }
}

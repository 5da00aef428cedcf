package fairpull.domain.unit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {
    @ParameterizedTest
    @CsvSource({"3.3 PS,3.3,PS", "4hp,4,hp", "-.5 kW,-0.5,kW", "1e3 W,1000,W", "5 1/min,5,rpm", "12 %,12,%", "7,7,1", "2 furlongs,2,furlongs"})
    void aNumberAndItsUnit(String text, double value, String symbol) {
        Amount amount = Amount.parse(text).orElseThrow();
        assertThat(amount.value()).isEqualTo(value);
        assertThat(amount.unit().symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3,3 PS", "1,000 hp", "1,5%", ",5 kW", "3 300 hp", "1.2.3 hp", "hp", ""})
    void whatGoesOnBehindTheNumberIsNoUnit(String text) {
        assertThat(Amount.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"3,3 PS|write 3.3 PS", "1,000 hp|write 1000 hp, or 1.000 hp", "1,234.5 hp|write 1234.5 hp",
        ",5 kW|a figure such as"})
    void aCommaIsAskedAbout(String text, String words) {
        assertThat(DecimalComma.in(text)).hasValueSatisfying(said -> assertThat(said).contains(text, words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"3.3 PS", "hp, as printed", "3 hp, corrected"})
    void whereNoNumberHasACommaNothingIsSaid(String text) {
        assertThat(DecimalComma.in(text)).isEmpty();
    }
}

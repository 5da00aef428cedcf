package fairpull.domain.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintedTest {
    @ParameterizedTest
    @CsvSource({"214.3 hp, 1, hp", "214 PS, 0, PS", "110°C, 0, °C", "12.50%, 2, %", "3 µm, 0, µm", "6.09 W·h, 2, W·h", "5500 1/min, 0, rpm",
        "2.14e2 hp, 0, hp", "7 ½-miles, 0, ''", "7 λ, 0, λ"})
    void aUnitBeginsWithALetterOrASignOfDegreesOrPercent(String text, int decimals, String unit) {
        if (unit.isEmpty()) {
            assertThatThrownBy(() -> Printed.parse(text)).hasMessageContaining("where its unit belongs");
        } else {
            assertThat(Printed.parse(text)).hasValueSatisfying(printed -> {
                assertThat(printed.decimals()).isEqualTo(decimals);
                assertThat(printed.unit().symbol()).isEqualTo(unit);
            });
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"214,3 PS | 214.3 PS", "-1,25 s | -1.25 s", "5,500 rpm | 5500 rpm, or 5.500 rpm", "1,234.5 N·m | 1234.5 N·m",
        "214,3PS | 214.3PS", "1,234,567 hp | a figure such as 214.3 hp", "1.234,5 hp | a figure such as 214.3 hp",
        "5, hp | a figure such as 214.3 hp", "0,5 % | 0.5 %"})
    void aCommaIsNamedWithWhatToWrite(String text, String write) {
        assertThatThrownBy(() -> Printed.parse(text)).isInstanceOf(IllegalArgumentException.class).hasMessage(
                "“" + text + "” has a comma in its number, and decimals stand behind a point here: write " + write);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e10 hp", "-1.1e9 hp", "1e999 hp", "1.0000000000001 hp", "214 3 hp", "1'234 hp", "3 h\u001bp", "3 -hp"})
    void whatNobodyPrintsIsRefused(String text) {
        assertThatThrownBy(() -> Printed.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 217.9 − 211.9 is 6.000000000000028 in doubles; 1 kW is 1000 W ÷ 745.69987 W a horsepower. */
    @Test
    void differencesAreThoseOfTheDigitsThatWerePrinted() {
        assertThat(figure("217.9 hp").above(figure("211.9 hp"))).isEqualTo(6.0);
        assertThat(figure("3.95 s").above(figure("4.02 s"))).isEqualTo(-0.07);
        assertThat(figure("91 °C").above(figure("90.5 °C"))).isEqualTo(0.5);
        assertThat(figure("101 hp").above(figure("74.569987 kW"))).isCloseTo(1, within(1e-6));
    }

    private static Printed figure(String text) {
        return Printed.parse(text).orElseThrow();
    }

    @Test
    void whatBeginsWithNoNumberIsNoFigure() {
        assertThat(Printed.parse("many hp")).isEmpty();
        assertThat(Printed.parse("")).isEmpty();
    }
}

package fairpull.io.table;

import static fairpull.domain.pull.DecimalMark.COMMA;
import static fairpull.domain.pull.DecimalMark.POINT;
import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.pull.DecimalMark;
import fairpull.io.table.NumberText.Evidence;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers as loggers write them; the reference is the JDK's own parser. */
class NumberTextTest {

    @Test
    void everyNumberReadsBackToTheLastBit() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200_000; i++) {
            double number = switch (i % 4) {
                case 0 -> random.nextInt(-5_000_000, 5_000_000) / 1000.0;
                case 1 -> random.nextDouble() * 1e4;
                case 2 -> (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-300, 300));
                default -> random.nextLong() >> random.nextInt(63);
            };
            String text = Double.toString(number);
            assertThat(NumberText.parse(text, POINT)).as(text).isEqualTo(number);
            assertThat(NumberText.parse(text.replace('.', ','), COMMA)).as(text).isEqualTo(number);
            String plain = String.format(Locale.ROOT, "%.6f", number);
            assertThat(NumberText.parse(plain, POINT)).as(plain).isEqualTo(Double.parseDouble(plain));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,234.5|1234.5", "12,345,678|12345678", "-1,234|-1234", "1.5e3|1500", "+.5|0.5", "5.|5", "−2.5|-2.5",
        "1E-2|0.01", "1 234.5|1234.5", "1'234.5|1234.5", "0|0", "007|7"})
    void numbersWithADecimalPoint(String text, double number) {
        assertThat(NumberText.parse(text, POINT)).isEqualTo(number);
        assertThat(NumberText.parse(" " + text + "\t", POINT)).isEqualTo(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", ".", "1,23", "12,34,567", "1,2345", "0,123.5", "1.2.3", "12:30", "1 2", "0x10", "NaN", "inf", "1e", "1e400",
        "12a", "--1", "1,234,56", "1d", "1f"})
    void textIsNoNumber(String text) {
        assertThat(NumberText.parse(text, POINT)).isNaN();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1234|EITHER", "1.5|POINT", "1,5|COMMA", "1.234|POINT_OR_THOUSANDS", "1,234|COMMA_OR_THOUSANDS",
        "0,123|COMMA", "0.123|POINT", "1234,567|COMMA", "1,234.5|POINT", "1.234.567|COMMA", "1.234,5|COMMA", "off|TEXT", "1.2.3|TEXT"})
    void cellsSpeakForADecimalMark(String text, Evidence evidence) {
        assertThat(NumberText.evidence(text)).isEqualTo(evidence);
    }
}

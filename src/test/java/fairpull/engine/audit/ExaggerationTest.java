package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.TypeErrors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gelman and Carlin (2014), page 643 to 645: their two examples, half a unit of the last printed digit. */
class ExaggerationTest {
    @ParameterizedTest
    @CsvSource({"2, 8.1, 0.06, 0.24, 9.5, 0.05", "0.1, 3.3, 0.05, 0.46, 77, 0.5"})
    void examplesOfThePaper(double gain, double error, double power, double wrongSign, double exaggeration, double half) {
        TypeErrors found = Exaggeration.at(gain, error, 0.05);

        assertThat(found.power()).isCloseTo(power, within(0.005));
        assertThat(found.wrongSign()).isCloseTo(wrongSign, within(0.005));
        assertThat(found.exaggeration()).isCloseTo(exaggeration, within(half));
    }
}

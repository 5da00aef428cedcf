package fairpull.domain.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an order says of drift and days, reckoned by hand. */
class RunOrderTest {
    @ParameterizedTest
    @CsvSource({"ABA, true", "ABBA, true", "BAAB, true", "BAB, true", "AB, false", "AAB, false", "AB|BA, true", "AB|AB, false",
        "A|B, false", "A|B|A, true", "ABA|ABA, true", "A|BA, false"})
    void anOrderReturnsWhereEachStateWasRunAfterTheOther(String letters, boolean returns) {
        assertThat(new RunOrder(letters).returns()).isEqualTo(returns);
    }

    /** What is said of the return is checked by what the grades go by. */
    @ParameterizedTest
    @CsvSource({"ABA, true", "BAB, true", "A|B|A, true", "AB|BA, true", "AB, false", "A|BA, false"})
    void whatIsSaidOfTheReturnIsWhatTheOrderAnswers(String letters, boolean returned) {
        Optional<RunOrder> order = Optional.of(new RunOrder(letters));

        assertThat(new Returning(order, Optional.of(returned)).returned()).hasValue(returned);
        assertThatThrownBy(() -> new Returning(order, Optional.of(!returned))).isInstanceOf(Contradiction.class)
                .hasMessageContaining("the order " + letters + (returned ? " returns" : " does not return") + " to the state before");
    }

    /** AAB|B: the first day holds all of A and half of B, the second the other half: 0.5² + 0.5². */
    @ParameterizedTest
    @CsvSource({"A|B, 2", "ABA, 0", "ABA|ABA, 0", "AB|BA, 0", "AAB|B, 0.5", "A|B|A, 1.5"})
    void theVarianceOfDaysEntersByHowUnequallyTheyHoldBothParts(String letters, double weight) {
        assertThat(new RunOrder(letters).dayWeight()).isCloseTo(weight, within(1e-12));
    }
}

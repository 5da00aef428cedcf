package fairpull.domain.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an order says of drift and days, reckoned by hand. */
class RunOrderTest {
    @ParameterizedTest
    @CsvSource({"ABA, true, true", "ABBA, true, true", "BAAB, false, true", "BAB, false, true", "AB, false, false", "AAB, false, false",
        "AB|BA, false, true", "AB|AB, false, false", "A|B, false, false", "A|B|A, false, true", "ABA|ABA, true, true", "A|BA, false, false"})
    void driftShowsWhereEachPartWasRunAfterTheOther(String letters, boolean returns, boolean showsDrift) {
        RunOrder order = new RunOrder(letters);

        assertThat(order.returns()).isEqualTo(returns);
        assertThat(order.showsDrift()).isEqualTo(showsDrift);
    }

    /** AAB|B: the first day holds all of A and half of B, the second the other half: 0.5² + 0.5². */
    @ParameterizedTest
    @CsvSource({"A|B, 2", "ABA, 0", "ABA|ABA, 0", "AB|BA, 0", "AAB|B, 0.5", "A|B|A, 1.5"})
    void theVarianceOfDaysEntersByHowUnequallyTheyHoldBothParts(String letters, double weight) {
        assertThat(new RunOrder(letters).dayWeight()).isCloseTo(weight, within(1e-12));
    }
}

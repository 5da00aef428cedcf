package fairpull.engine.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class HolmTest {
    /** R 4.2.2: p.adjust(c(.01, .04, .03, .005), "holm") is .03 .06 .06 .02. */
    @Test
    void asR() {
        List<OptionalDouble> adjusted = Holm.adjust(List.of(OptionalDouble.of(.01), OptionalDouble.of(.04), OptionalDouble.of(.03),
                OptionalDouble.of(.005)));
        double[] expected = {.03, .06, .06, .02};
        for (int i = 0; i < 4; i++) {
            assertThat(adjusted.get(i).getAsDouble()).isCloseTo(expected[i], Offset.offset(1e-15));
        }
    }

    @Test
    void emptyOnesDoNotCount() {
        assertThat(Holm.adjust(List.of(OptionalDouble.of(.02), OptionalDouble.empty(), OptionalDouble.of(.9))))
                .containsExactly(OptionalDouble.of(.04), OptionalDouble.empty(), OptionalDouble.of(.9));
        assertThat(Holm.adjust(List.of())).isEmpty();
    }

    @Test
    void neverAboveOne() {
        assertThat(Holm.adjust(List.of(OptionalDouble.of(.7), OptionalDouble.of(.8))))
                .containsExactly(OptionalDouble.of(1), OptionalDouble.of(1));
    }
}

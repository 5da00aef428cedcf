package fairpull.domain.audit;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CurveSeenTest {
    @Test
    void aLongCurveKeepsItsEndsItsTopAndPointsThatWereThere() {
        CurveSeen curve = curve(10_001, 7777);
        CurveSeen thinned = curve.thinned(1000);

        assertThat(thinned.size()).isBetween(900, 1003);
        assertThat(thinned.range()).isEqualTo(curve.range());
        assertThat(thinned.values().stream().max()).hasValue(500);
        assertThat(IntStream.range(0, thinned.size()).allMatch(point -> thinned.valueErrors().at(point) == thinned.speedsRadPerS().at(point)))
                .as("each with its own errors").isTrue();
    }

    @Test
    void aShortOneStaysAsItIs() {
        CurveSeen curve = curve(1000, 3);

        assertThat(curve.thinned(1000)).isSameAs(curve);
        assertThat(curve(1001, 3).thinned(1000).size()).isLessThan(600);
    }

    private static CurveSeen curve(int points, int top) {
        Samples speeds = Samples.of(IntStream.range(0, points).mapToDouble(k -> 100 + k).toArray());
        Samples values = Samples.of(IntStream.range(0, points).mapToDouble(k -> k == top ? 500 : 100).toArray());
        return new CurveSeen(Units.WATT, Units.RPM, speeds, values, speeds, speeds);
    }
}

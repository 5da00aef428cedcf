package fairpull.app.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The orders offered by name, reckoned by the places of their letters: equal installs follow each other at equal times. */
class StartingPlanTest {
    static List<String> templates() {
        return StartingPlan.TEMPLATES;
    }

    @ParameterizedTest
    @MethodSource("templates")
    void everyDayEndsWithThePartThatItBeganWith(String order) {
        assertThat(days(order)).allMatch(day -> day.charAt(0) == day.charAt(day.length() - 1) && day.contains("A") && day.contains("B"));
        assertThat(order).startsWith("A");
    }

    /** A drift of 1 a place from the middle of each day comes out of the difference of both means as their difference in mean place. */
    @ParameterizedTest
    @MethodSource("templates")
    void aSteadyDriftLeavesTheChangeAlone(String order) {
        assertThat(meanPlace(order, 'B')).isCloseTo(meanPlace(order, 'A'), within(1e-12));
    }

    private static double meanPlace(String order, char part) {
        return days(order).flatMapToDouble(day -> IntStream.range(0, day.length()).filter(place -> day.charAt(place) == part)
                .mapToDouble(place -> place - (day.length() - 1) / 2.0)).average().orElseThrow();
    }

    private static Stream<String> days(String order) {
        return Stream.of(order.split("\\|"));
    }
}

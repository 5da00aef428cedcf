package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.io.File;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SizingTest {
    private static final File EXTENDED = new File("src/test/resources/computed/size-r-extended/extended.json");

    private static SizeQuestion question(String order, int pulls) {
        return new SizeQuestion(order, pulls, 0, 1.2, 0, 0.6, 0, 3, 0.8, 0.05, Sides.TWO, Drift.NONE, new SizeQuestion.Clock(5, 20, 0));
    }

    /** Several sessions, quadratic drift, one side, warm-ups, set-up, known scatter (README of computed/size-r-extended). */
    @Test
    void extendedAsR() throws IOException {
        JsonNode rows = new ObjectMapper().readTree(EXTENDED);
        assertThat(rows.size()).isEqualTo(12);
        for (JsonNode row : rows) {
            SizeAnswer answer = Sizing.size(new SizeQuestion(row.get("order").asText(), row.get("pulls").asInt(), row.get("warmUps").asInt(),
                    number(row, "pullScatter"), number(row, "pullDf"), number(row, "refitScatter"), number(row, "refitDf"),
                    number(row, "gain"), number(row, "powerWanted"), number(row, "alpha"),
                    Sides.valueOf(row.get("sides").asText().toUpperCase(Locale.ROOT)), Drift.values()[row.get("terms").asInt()],
                    new SizeQuestion.Clock(number(row, "interval"), number(row, "swap"), number(row, "setUp"))));
            assertThat(answer.standardError().orElseThrow()).as("se " + row).isCloseTo(number(row, "standardError"), withinPercentage(1e-4));
            if (Double.isInfinite(number(row, "degreesOfFreedom"))) {
                assertThat(answer.degreesOfFreedom().orElseThrow()).isInfinite();
            } else {
                assertThat(answer.degreesOfFreedom().orElseThrow()).as("df " + row)
                        .isCloseTo(number(row, "degreesOfFreedom"), withinPercentage(1e-4));
            }
            assertThat(answer.power().orElseThrow()).as("power " + row).isCloseTo(number(row, "power"), withinPercentage(1e-4));
            assertThat(answer.detectableGain().orElseThrow()).as("gain " + row)
                    .isCloseTo(number(row, "detectableGain"), withinPercentage(1e-4));
            assertThat(answer.limit().orElseThrow()).as("limit " + row).isCloseTo(number(row, "limit"), withinPercentage(1e-4));
            assertThat(answer.minutes()).isEqualTo(number(row, "minutes"));
            assertThat(answer.leastRandomisationP()).isCloseTo(number(row, "leastRandomisationP"), withinPercentage(1e-10));
        }
    }

    private static double number(JsonNode row, String name) {
        return row.get(name).isTextual() ? Double.POSITIVE_INFINITY : row.get(name).asDouble();
    }

    /**
     * With pull scatter gone the test is the t test on install means: smallest gain found with 80 % power, in units of the standard
     * deviation of an install mean, computed from the non-central t in R 4.2.2 (two decimals).
     */
    @ParameterizedTest
    @CsvSource({"ABA, 20.01", "ABAB, 5.65", "ABBA, 5.65", "ABABA, 3.89", "ABABAB, 3.07", "ABABABA, 2.68", "ABBABAAB, 2.38",
        "ABABABABA, 2.19", "ABABABABABAB, 1.80"})
    void limitIsTheTestOnInstallMeans(String order, double expected) {
        assertThat(Sizing.size(question(order, 5)).limit().orElseThrow() / 0.6).isCloseTo(expected, within(0.0051));
    }

    @Test
    void morePullsNeverReachBelowTheLimit() {
        double last = Double.POSITIVE_INFINITY;
        for (int pulls = 1; pulls <= 64; pulls *= 2) {
            SizeAnswer answer = Sizing.size(question("ABABA", pulls));
            assertThat(answer.detectableGain().orElseThrow()).isLessThan(last).isGreaterThan(answer.limit().orElseThrow());
            last = answer.detectableGain().orElseThrow();
        }
    }

    @Test
    void detectableGainHasThePowerWanted() {
        SizeQuestion question = question("ABBABA", 4);
        double gain = Sizing.size(question).detectableGain().orElseThrow();
        SizeQuestion again = new SizeQuestion("ABBABA", 4, 0, 1.2, 0, 0.6, 0, gain, 0.8, 0.05, Sides.TWO, Drift.NONE, question.clock());
        assertThat(Sizing.size(again).power().orElseThrow()).isCloseTo(0.8, within(1e-9));
    }

    @Test
    void abWithoutARecordCannotBeJudged() {
        SizeAnswer answer = Sizing.size(question("AB", 5));
        assertThat(answer.power()).isEmpty();
        assertThat(answer.detectableGain()).isEmpty();
        assertThat(answer.standardError()).isEmpty();
        assertThat(answer.limit()).isEmpty();
        assertThat(answer.pullsNeeded()).isEmpty();
        assertThat(answer.installsNeeded()).isPresent();
        assertThat(answer.minutes()).isEqualTo(70);
    }

    @Test
    void sessionsThatAreThePartCannotBeJudged() {
        assertThat(Sizing.size(question("AA|BB", 5)).power()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "AAA", "BB", "ABC", "aba", "|ABA", "ABA|", "ABA||BAB", "A B A"})
    void malformedOrderIsRefused(String order) {
        assertThatThrownBy(() -> Sizing.size(question(order, 5))).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("order");
    }

    @Test
    void figuresOutOfRangeAreRefused() {
        assertThatThrownBy(() -> Sizing.size(question("ABA", 0))).isInstanceOf(IllegalArgumentException.class);
        for (double scatter : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> Sizing.size(new SizeQuestion("ABA", 5, 0, scatter, 0, 0.6, 0, 3, 0.8, 0.05, Sides.TWO, Drift.NONE,
                    new SizeQuestion.Clock(5, 20, 0)))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("pull scatter");
            assertThatThrownBy(() -> Sizing.size(new SizeQuestion("ABA", 5, 0, 1, 0, scatter, 0, 3, 0.8, 0.05, Sides.TWO, Drift.NONE,
                    new SizeQuestion.Clock(5, 20, 0)))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("refit scatter");
        }
    }
}

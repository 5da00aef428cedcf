package fairpull.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.io.File;
import java.io.IOException;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** All nine figures of size against R (computed/size-r): dense matrices and R's non-central t, 1e-6 relative. */
class SizingAgainstRTest {
    private static final double FIGURES = 1e-6;
    private static final File GRID = new File("src/test/resources/computed/size-r/grid.json");

    @Test
    void answersAsR() throws IOException {
        JsonNode grid = new ObjectMapper().readTree(GRID);
        assertThat(grid.size()).isGreaterThanOrEqualTo(200);
        for (JsonNode row : grid) {
            SizeAnswer answer = Sizing.size(question(row));
            figure(answer.standardError(), row, "standardError");
            figure(answer.degreesOfFreedom(), row, "degreesOfFreedom");
            figure(answer.power(), row, "power");
            figure(answer.detectableGain(), row, "detectableGain");
            figure(answer.limit(), row, "limit");
            figure(OptionalDouble.of(answer.minutes()), row, "minutes");
            figure(OptionalDouble.of(answer.leastRandomisationP()), row, "leastRandomisationP");
            count(answer.pullsNeeded(), row, "pullsNeeded");
            count(answer.installsNeeded(), row, "installsNeeded");
        }
    }

    private static SizeQuestion question(JsonNode row) {
        return new SizeQuestion(row.get("order").asText(), row.get("pulls").asInt(), 0, row.get("pullScatter").asDouble(),
                row.get("pullDf").asDouble(), row.get("refitScatter").asDouble(), row.get("refitDf").asDouble(), row.get("gain").asDouble(),
                row.get("powerWanted").asDouble(), row.get("alpha").asDouble(), Sides.TWO,
                row.get("drift").asBoolean() ? Drift.LINEAR : Drift.NONE,
                new SizeQuestion.Clock(row.get("interval").asDouble(), row.get("swap").asDouble(), 0));
    }

    private static void figure(OptionalDouble actual, JsonNode row, String name) {
        assertThat(actual.isPresent()).as(name + " of " + row).isEqualTo(row.get(name).isNumber());
        actual.ifPresent(value -> assertThat(Math.abs(value - row.get(name).asDouble())).as(name + " " + value + " of " + row)
                .isLessThanOrEqualTo(FIGURES * row.get(name).asDouble()));
    }

    private static void count(OptionalInt actual, JsonNode row, String name) {
        assertThat(actual).as(name + " of " + row)
                .isEqualTo(row.get(name).isNumber() ? OptionalInt.of(row.get(name).asInt()) : OptionalInt.empty());
    }
}

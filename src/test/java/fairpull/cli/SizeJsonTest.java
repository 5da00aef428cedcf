package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code size --json} from the command line to the document, against what R computed (computed/size-r): within 1e-6 relative. */
class SizeJsonTest {
    private static final Path GRID = Path.of("src/test/resources/computed/size-r/grid.json");
    private static final double FIGURES = 1e-6;
    private static final List<String> KEYS = List.of("power", "detectableGain", "standardError", "degreesOfFreedom", "minutes", "limit",
            "leastRandomisationP", "pullsNeeded", "installsNeeded");

    /** Every twelfth plan: plans that cannot be judged, with records, with drift are among them. */
    static IntStream plans() throws IOException {
        return IntStream.range(0, grid().size()).filter(row -> row % 12 == 0);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void allNineFiguresAreThoseOfR(int row) throws IOException {
        JsonNode plan = grid().get(row);

        JsonNode found = Run.of(words(plan).toArray()).json();

        assertThat(found.fieldNames()).toIterable().containsExactlyElementsOf(KEYS);
        for (String key : KEYS) {
            if (plan.get(key).isNull()) {
                assertThat(found.get(key).isNull()).as(key + " of " + plan).isTrue();
            } else {
                double wanted = plan.get(key).asDouble();
                assertThat(found.get(key).asDouble()).as(key + " of " + plan)
                        .isCloseTo(wanted, Offset.offset(FIGURES * Math.abs(wanted)));
            }
        }
    }

    @Test
    void aScatterWithoutDegreesOfFreedomIsAPlanningValueHereAndNoRecordThere() {
        Run.of("size", "--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "2").succeeded();
        Run.of("judge", "--table", "src/test/resources/computed/judge-lme4-pbkrtest/23-ABABA-n5-si07.csv", "--refit-scatter", "1")
                .refused(2, "--refit-scatter", "--refit-df");
    }

    @Test
    void warmUpsAndSetUpLengthenTheDayOnly() {
        JsonNode plain = Run.of("size", "--sequence", "ABA", "--pulls", "5", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "2",
                "--json").json();
        JsonNode longer = Run.of("size", "--sequence", "ABA", "--pulls", "5", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "2",
                "--warm-ups", "2", "--set-up", "30", "--json").json();

        assertThat(plain.get("minutes").asDouble()).as("15 pulls of 5 minutes and 2 swaps of 20").isEqualTo(115);
        assertThat(longer.get("minutes").asDouble()).as("6 warm-ups of 5 minutes and half an hour more").isEqualTo(175);
        assertThat(longer.get("power")).isEqualTo(plain.get("power"));
    }

    private static JsonNode grid() throws IOException {
        return new ObjectMapper().readTree(GRID.toFile());
    }

    private static List<Object> words(JsonNode plan) {
        List<Object> words = new ArrayList<>(List.of("size", "--json", "--sequence", plan.get("order").asText(), "--pulls",
                plan.get("pulls").asText(), "--drift", plan.get("drift").asBoolean() ? "linear" : "none"));
        List.of("--pull-scatter pullScatter", "--refit-scatter refitScatter", "--refit-df refitDf", "--pull-df pullDf", "--gain gain",
                "--alpha alpha", "--power-wanted powerWanted", "--interval interval", "--swap swap").forEach(pair -> {
                    words.add(pair.split(" ")[0]);
                    words.add(plan.get(pair.split(" ")[1]).asText());
                });
        return words;
    }
}

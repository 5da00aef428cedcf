package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * {@code judge --table --json} from the command line to the document: every key is there and holds the figure that R computed
 * (computed/judge-lme4-pbkrtest, computed/judge-more, each with its README). Figures within 1e-5, p-values and ends within 1e-4 relative.
 */
class JudgeTableTest {
    private static final Path COMPUTED = Path.of("src/test/resources/computed");
    private static final double FIGURES = 1e-5;
    private static final double P_VALUES = 1e-4;
    private static final List<String> KEYS = List.of("unit", "estimate", "standardError", "degreesOfFreedom", "t", "pValue", "interval",
            "equivalence", "scatter", "installMeans", "verdict", "worthwhile", "tippingScatter", "returnCheck", "recordCheck",
            "randomisation", "secondary", "warnings");
    private static final String PULL_AND_REFIT = "--refit-scatter 0.8 --refit-df 6 --pull-scatter 1.1 --pull-df 10";

    static Stream<Arguments> judged() {
        String small = "judge-lme4-pbkrtest/23-ABABA-n5-si07";
        String air = "judge-lme4-pbkrtest/10-ABA-n5-drift-iat";
        String days = "judge-more/d01-ABA-BAB-6-3";
        return Stream.of(
                arguments(small, "none/ownData", "", "gain", "open"),
                arguments(small, "linear/ownData", "--drift linear", "undecided", "open"),
                arguments(small, "quadratic/ownData", "--drift quadratic", "undecided", "open"),
                arguments(small, "none/record_0.5_4", "--refit-scatter 0.6 --refit-df 4", "gain", "yes"),
                arguments(small, "linear/record_1_20", "--drift linear --refit-scatter 1.2 --refit-df 20", "gain", "open"),
                arguments(small, "quadratic/recordBoth", "--drift quadratic " + PULL_AND_REFIT, "gain", "yes"),
                arguments(air, "covariateIat/record_0.5_4", "--covariate iat_c --refit-scatter 0.6 --refit-df 4", "gain", "yes"),
                arguments(air, "none/recordBoth", PULL_AND_REFIT, "gain", "yes"),
                // Pulls are unequal: the equivalence of the install means must agree, and (1.5 − 0.5749)/0.4005 on 3 df has p = 0.052.
                arguments(days, "none/ownData", "", "undecided", "open"),
                arguments(days, "linear/ownData", "--drift linear", "undecided", "open"),
                arguments(days, "none/record_1_20", "--refit-scatter 1.2 --refit-df 20", "undecided", "open"),
                arguments("judge-more/r04-refit-0-ABBA", "none/ownData", "", "no difference that matters", "no"),
                arguments("judge-more/m03-9", "linear/recordBoth", "--drift linear " + PULL_AND_REFIT, "no difference that matters", "open"),
                arguments("judge-more/u03-ABA-10-2-10", "none/ownData", "", "undecided", "open"),
                arguments("judge-more/r07-loss", "none/ownData", "", "loss", "no"));
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("judged")
    void everyKeyHoldsItsFigure(String table, String figures, String options, String verdict, String worthwhile) throws IOException {
        JsonNode all = expected(table);
        JsonNode expected = at(all, figures);
        assertThat(expected.isObject()).as("figures of %s", figures).isTrue();

        JsonNode found = judge(table, options + " --worthwhile " + all.get("margin").asText() + " --unit hp");

        assertThat(found.fieldNames()).toIterable().containsAll(KEYS);
        assertThat(found.get("unit").asText()).isEqualTo("hp");
        for (String figure : List.of("estimate", "standardError", "degreesOfFreedom", "t")) {
            close(found.get(figure), expected.get(figure), FIGURES, figure);
        }
        close(found.get("pValue"), expected.get("pValue"), P_VALUES, "pValue");
        assertThat(found.at("/interval/level").asDouble()).isEqualTo(0.95);
        close(found.at("/interval/low"), expected.get("low"), P_VALUES, "low");
        close(found.at("/interval/high"), expected.get("high"), P_VALUES, "high");
        close(found.at("/equivalence/margin"), all.get("margin"), 0, "margin");
        close(found.at("/equivalence/pValue"), expected.get("equivalenceP"), P_VALUES, "equivalence");
        close(found.at("/scatter/pull"), expected.get("pullScatter"), FIGURES, "pull scatter");
        close(found.at("/scatter/refitVariance"), expected.get("refitVariance"), P_VALUES, "refit variance");
        assertThat(found.get("verdict").asText()).isEqualTo(verdict);
        assertThat(found.get("worthwhile").asText()).isEqualTo(worthwhile);
        assertThat(found.get("secondary").isArray() && found.get("secondary").isEmpty()).isTrue();
        assertThat(found.get("warnings").isArray()).isTrue();
        checkBeside(found, all, figures.substring(0, figures.indexOf('/')), options);
    }

    private static void checkBeside(JsonNode found, JsonNode all, String drift, String options) {
        if (drift.equals("none")) {
            JsonNode means = all.at("/none/installMeans");
            for (String figure : List.of("estimate", "standardError", "degreesOfFreedom", "pValue")) {
                close(found.at("/installMeans/" + figure), means.get(figure), P_VALUES, "install means " + figure);
            }
        }
        JsonNode tipping = all.at("/" + drift + "/tippingScatter");
        if (!options.contains("--pull-scatter") && tipping.isNumber()) {
            close(found.get("tippingScatter"), tipping, FIGURES, "tipping scatter");
        }
        if (all.has("returnCheck")) {
            for (String figure : List.of("difference", "low", "high")) {
                close(found.at("/returnCheck/" + figure), all.at("/returnCheck/" + figure), P_VALUES, "return check " + figure);
            }
        } else {
            assertThat(found.get("returnCheck").isNull()).as("no return check over two sessions").isTrue();
        }
        if (options.contains("--refit-scatter 0.6") && all.at("/" + drift + "/recordF_0.6_4").isObject()) {
            for (String figure : List.of("F", "df1", "df2", "pValue")) {
                close(found.at("/recordCheck/" + figure), all.at("/" + drift + "/recordF_0.6_4/" + figure), P_VALUES, "record " + figure);
            }
        }
        assertThat(found.get("recordCheck").isNull()).as("no record, no record check").isEqualTo(!options.contains("--refit-scatter"));
        assertThat(found.get("randomisation").isNull()).as("not drawn, no randomisation test").isTrue();
    }

    @Test
    void aDrawnOrderAddsTheRandomisationTest() throws IOException {
        JsonNode expected = expected("judge-lme4-pbkrtest/23-ABABA-n5-si07");
        JsonNode found = judge("judge-lme4-pbkrtest/23-ABABA-n5-si07", "--drawn");

        close(found.at("/randomisation/p"), expected.get("randomisationP"), P_VALUES, "randomisation");
        assertThat(found.at("/randomisation/orders").asInt()).as("5 over 2").isEqualTo(10);
    }

    /** The one-sided p is half the two-sided one where the estimate leans the better way, and one less half of it where it does not. */
    @Test
    void oneSidedLooksInTheBetterDirectionOnly() throws IOException {
        JsonNode expected = at(expected("judge-lme4-pbkrtest/23-ABABA-n5-si07"), "none/ownData");
        JsonNode more = judge("judge-lme4-pbkrtest/23-ABABA-n5-si07", "--sides one");
        JsonNode less = judge("judge-lme4-pbkrtest/23-ABABA-n5-si07", "--sides one --better less");

        assertThat(more.get("pValue").asDouble()).isCloseTo(expected.get("pValue").asDouble() / 2, within());
        assertThat(more.at("/interval/high").isNull()).isTrue();
        assertThat(more.at("/interval/low").asDouble()).isGreaterThan(expected.get("low").asDouble()).isPositive();
        assertThat(more.get("verdict").asText()).isEqualTo("gain");
        assertThat(less.get("pValue").asDouble()).isCloseTo(1 - expected.get("pValue").asDouble() / 2, within());
        assertThat(less.at("/interval/low").isNull()).isTrue();
        assertThat(less.get("verdict").asText()).isEqualTo("undecided");
    }

    @Test
    void whereLessIsBetterTheSameEstimateIsALoss() throws IOException {
        JsonNode more = judge("judge-lme4-pbkrtest/23-ABABA-n5-si07", "");
        JsonNode less = judge("judge-lme4-pbkrtest/23-ABABA-n5-si07", "--better less");

        assertThat(less.get("estimate")).isEqualTo(more.get("estimate"));
        assertThat(more.get("verdict").asText()).isEqualTo("gain");
        assertThat(less.get("verdict").asText()).isEqualTo("loss");
    }

    @Test
    void whatDoesNotExistIsNull() throws IOException {
        JsonNode found = judge("judge-lme4-pbkrtest/01-AB-n5-noinstall", "");

        assertThat(found.fieldNames()).toIterable().containsAll(KEYS);
        assertThat(found.get("verdict").asText()).isEqualTo("cannot be judged");
        for (String key : List.of("unit", "standardError", "degreesOfFreedom", "t", "pValue", "interval", "equivalence", "worthwhile",
                "returnCheck", "recordCheck", "randomisation")) {
            assertThat(found.get(key).isNull()).as(key).isTrue();
        }
        assertThat(found.at("/installMeans/pValue").isNumber()).isFalse();
    }

    private static JsonNode judge(String table, String options) {
        List<Object> words = new ArrayList<>(List.of("judge", "--table", COMPUTED.resolve(table + ".csv"), "--json"));
        Stream.of(options.strip().split(" +")).filter(word -> !word.isEmpty()).forEach(words::add);
        return Run.of(words.toArray()).json();
    }

    private static JsonNode expected(String table) throws IOException {
        return new ObjectMapper().readTree(COMPUTED.resolve(table + ".json").toFile());
    }

    private static JsonNode at(JsonNode all, String figures) {
        JsonNode node = all;
        for (String step : figures.split("/")) {
            node = node.path(step);
        }
        return node;
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-9);
    }

    private static void close(JsonNode found, JsonNode expected, double relative, String what) {
        assertThat(found.isNumber()).as("%s is a number: %s", what, found).isTrue();
        double wanted = expected.asDouble();
        assertThat(found.asDouble()).as(what).isCloseTo(wanted,
                Offset.offset(relative * Math.max(Math.abs(wanted), 1e-3)));
    }
}

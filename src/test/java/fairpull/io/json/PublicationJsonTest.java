package fairpull.io.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fairpull.domain.InputException;
import fairpull.domain.audit.Publication;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The file of a publication: written as it reads, held by the schema that ships, refused with the line that is to blame. */
class PublicationJsonTest {
    private static final String TEMPLATE = resource("/fairpull/audit/publication.json");
    private static final String FULL = """
            {
              "publicationVersion": 1,
              "title": "Everything said", "remark": "invented", "source": "invented", "changed": "manifold",
              "figures": [
                {"name": "power", "before": "201.40 hp", "after": "217 hp", "at": "5500 rpm", "better": "more",
                 "values": {"before": ["200.1 hp", "202.7 hp"], "after": ["216.0 hp", "218 hp"], "paired": "no"}},
                {"name": "lap", "before": "1.5e1 s", "after": "14.6 s", "better": "less"}
              ],
              "curves": [
                {"name": "power", "unit": "hp", "before": {"file": "before.csv", "column": "power"}, "after": {"trace": "chart.json"}},
                {"name": "torque", "unit": "lb-ft", "speedUnit": "rad/s", "before": {"points": ["300 190.0", "350 195"]},
                 "after": {"points": ["300 191", "350 197.25"]}}
              ],
              "procedure": {
                "pullsBefore": "5", "quotedBefore": "mean", "pullsAfter": "5", "quotedAfter": "best", "order": "A/B/A", "namedBefore": "yes",
                "rig": "same", "strapDown": "different", "day": "same", "alsoChanged": "the fuel",
                "correctionBefore": "sae-j1349", "correctionAfter": "none", "barometerBefore": "station", "barometerAfter": "sea-level",
                "elevation": "1200 ft", "smoothingBefore": "200 rpm", "smoothingAfter": "as the rig has it",
                "sweepFrom": "2500 rpm", "sweepTo": "6500 rpm",
                "scatter": {"pull": {"deviation": "0.5 %", "degreesOfFreedom": "12"}, "refit": {"deviation": "0.90 hp"}}
              },
              "claims": [{"words": "15 more", "figure": "power", "gain": "15.0 hp"}, {"words": "quicker", "figure": "lap"}]
            }
            """;

    @Test
    void whatIsWrittenReadsBackAsTheSame() {
        Publication read = PublicationJson.read(FULL, "full.json");
        String written = PublicationJson.write(read);

        assertThat(PublicationJson.read(written, "full.json")).isEqualTo(read);
        assertThat(PublicationJson.write(PublicationJson.read(written, "full.json"))).isEqualTo(written);
        assertThat(written).contains("\"before\" : \"201.40 hp\"", "\"before\" : \"15 s\"", "\"order\" : \"ABA\"", "\"sweepTo\" : \"6500 rpm\"",
                "\"300 191\"", "\"deviation\" : \"0.90 hp\"", "\"returned\" : \"not disclosed\"");
        assertThat(read.procedure().returning().returned()).contains(true);
    }

    @Test
    void theTemplateIsWhatTheWriterMakesOfIt() {
        assertThat(PublicationJson.write(PublicationJson.read(TEMPLATE, "template"))).isEqualTo(TEMPLATE);
    }

    @Test
    void demosAndTemplateAreValidByTheSchemaThatShips() throws IOException {
        List<String> texts = new ArrayList<>(List.of(TEMPLATE, FULL, PublicationJson.write(PublicationJson.read(FULL, ""))));
        try (Stream<Path> files = Files.list(Path.of("demo-data/published"))) {
            for (Path file : files.filter(file -> file.toString().endsWith(".json")
                    && !file.getFileName().toString().contains("trace")).toList()) {
                texts.add(Files.readString(file));
            }
        }

        assertThat(texts).hasSizeGreaterThan(5).allSatisfy(text -> assertThat(errors(text)).isEmpty());
        assertThat(errors(FULL.replace("\"title\"", "\"colour\": \"red\", \"title\""))).isNotEmpty();
        assertThat(errors(FULL.replace("\"sae-j1349\"", "\"sae\""))).isNotEmpty();
        assertThat(errors(FULL.replace("\"trace\"", "\"file\": \"x.csv\", \"trace\""))).isNotEmpty();
    }

    /** Every record of the reader against the object of the schema that bears its name. */
    @Test
    void theSchemaHoldsEveryFieldOfTheFileAndNoOther() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(resource("/fairpull/schema/publication.schema.json"));
        fields(PublicationFile.class, schema);
        JsonNode definitions = schema.get("$defs");
        for (Class<?> type : PublicationFile.class.getDeclaredClasses()) {
            String name = type.getSimpleName().replace("Fields", "");
            fields(type, definitions.get(name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1)));
        }
        assertThat(PublicationFile.class.getDeclaredClasses()).hasSize(definitions.size() - 1);
    }

    private static void fields(Class<?> type, JsonNode object) {
        assertThat(object).as("the schema's object for %s", type.getSimpleName()).isNotNull();
        List<String> names = new ArrayList<>();
        object.get("properties").fieldNames().forEachRemaining(names::add);
        assertThat(Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName)).as("fields of %s", type.getSimpleName())
                .containsExactlyInAnyOrderElementsOf(names);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"changed\" | \"colour\": 1, \"changed\" | 3 | no such field",
        "\"after\": \"217 hp\" | \"colour\": 1, \"after\": \"217 hp\" | 5 | no such field",
        "\"elevation\" | \"colour\": 1, \"elevation\" | 18 | no such field",
        "\"none\" | \"mine\" | 17 | a correction is one of",
        "1200 ft | 1200 hp | 18 | expected a height",
        "A/B/A | A/C | 15 | an order is written as A and B",
        "6500 rpm | 650 rpm | 19 | 0 < low ≤ high",
        "\"alsoChanged\" | \"allElse\": \"same\", \"alsoChanged\" | 16 | only one can be",
        "\"namedBefore\" | \"returned\": \"no\", \"namedBefore\" | 15 | against what is said of it",
        "\"rig\": \"same\", \"strapDown\": \"different\" | \"rig\": \"different\", \"strapDown\": \"same\" | 16 | the rigs differ",
        "A/B/A | 'A|B' | 16 | 'no day of the order A|B has both states'",
        "\"pullsBefore\": \"5\" | \"pullsBefore\": \"1\" | 15 | 2 installs of the state before",
        "\"quotedBefore\": \"mean\" | \"quotedBefore\": \"single\" | 15 | a single pull is quoted, and 5 were run",
        "\"quotedAfter\": \"best\" | \"quotedAfter\": \"single\" | 15 | procedure.pullsAfter",
        "\"217 hp\" | \"217,3 hp\" | 5 | write 217.3 hp",
        "\"217 hp\" | \"1,217.5 hp\" | 5 | write 1217.5 hp",
        "5500 rpm | 5,500 rpm | 5 | 'write 5500 rpm, or 5.500 rpm'",
        "5500 rpm | 5.500 rpm | 5 | from 100 to 50000 rpm",
        "\"217 hp\" | \"2 17 hp\" | 5 | write all digits together",
        "\"217 hp\" | \"217\" | 5 | expected a figure with its unit, as a text such as “217 hp”",
        "\"217 hp\" | 217 | 5 | expected a figure with its unit, as a text such as “217 hp”",
        "\"217 hp\" | \"1e308 hp\" | 5 | lies between",
        "\"217 hp\" | \"217.0000000000001 hp\" | 5 | 12 decimals",
        "\"202.7 hp\" | \"202,7 hp\" | 6 | write 202.7 hp",
        "\"202.7 hp\" | \"202.7 N·m\" | 5 | printed in hp, and one of its values is “202.7 N·m”",
        "350 195 | 350 195,5 | 11 | write 195.5 lb-ft",
        "0.5 % | 0,5 % | 20 | write 0.5 %",
        "\"15.0 hp\" | \"15.0 N·m\" | 22 | is printed in hp; give the gain in hp or in percent",
        "\"15.0 hp\" | \"15\" | 22 | expected a figure with its unit",
        "\"15 more\" | \"\" | 22 | a claim is empty",
        "\"name\": \"lap\" | \"name\": \"\" | 7 | the name of a figure is empty",
        "the fuel | a\\u202eb | 16 | control character",
        "Everything said | a\\u202eb | 3 | control character",
        "15 more | a \\ud800 b | 22 | control character"})
    void whatCannotBeIsRefusedWithItsLine(String there, String instead, int line, String words) {
        assertThat(FULL).contains(there);
        assertThatThrownBy(() -> PublicationJson.read(FULL.replaceFirst(Pattern.quote(there),
                Matcher.quoteReplacement(instead)), "x.json")).isInstanceOfSatisfying(InputException.class,
                        refused -> assertThat(refused.oneLine()).startsWith("x.json, line " + line + ",").contains(words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "before.csv | ../before.csv | without a folder",
        "before.csv | C:before.csv | without a folder",
        "before.csv | .hidden | without a folder",
        "\"trace\": \"chart.json\" | \"trace\": \"chart.json\", \"file\": \"b.csv\" | one source",
        "350 195 | 250 195 | rising speed",
        "350 195 | 350 | a speed and a value",
        "\"at\": \"5500 rpm\" | \"at\": \"5500 hp\" | engine speed from 100 to 50000 rpm",
        "\"name\": \"lap\" | \"name\": \"power\" | same name",
        "\"unit\": \"hp\", | \"unit\": \"horses\", | no unit of a curve",
        "0.5 % | -0.5 % | standard deviation of 0 or more"})
    void andWhatContradictsItselfInOneLine(String there, String instead, String words) {
        assertThat(FULL).contains(there);
        assertThatThrownBy(() -> PublicationJson.read(FULL.replace(there, instead), "x.json")).isInstanceOfSatisfying(InputException.class,
                refused -> assertThat(refused.oneLine()).startsWith("x.json").contains(words).doesNotContain("\n"));
    }

    /** As many and as long as the schema has them: one more is refused by both. */
    @Test
    void whatIsMoreOrLongerThanTheSchemaHasItIsRefusedByBoth() {
        assertThat(errors(full("figures", 18))).isEmpty();
        assertThat(PublicationJson.read(full("figures", 18), "x.json").figures()).hasSize(20);
        refusedByBoth(full("figures", 19), "line 4,", "at most 20 figures, were 21");
        assertThat(PublicationJson.read(full("curves", 6), "x.json").curves()).hasSize(8);
        refusedByBoth(full("curves", 7), "line 9,", "at most 8 curves, were 9");
        assertThat(PublicationJson.read(full("claims", 38), "x.json").claims()).hasSize(40);
        refusedByBoth(full("claims", 39), "line 22,", "at most 40 claims, were 41");
        assertThat(PublicationJson.read(FULL.replace("15 more", "x".repeat(300)), "x.json").claims()).hasSize(2);
        refusedByBoth(FULL.replace("15 more", "x".repeat(301)), "line 22,", "a claim has 301 characters; write at most 300");
        refusedByBoth(FULL.replace("Everything said", "x".repeat(301)), "line 3,", "the title has 301 characters");
        refusedByBoth(FULL.replace("\"remark\": \"invented\"", "\"remark\": \"" + "x".repeat(2001) + "\""), "line 3,", "at most 2000");
        refusedByBoth(FULL.replace("the fuel", "x".repeat(301)), "line 16,", "what else was changed has 301 characters");
        refusedByBoth(FULL.replace("as the rig has it", "x".repeat(301)), "line 18,", "the smoothing after has 301 characters");
        refusedByBoth(FULL.replace("\"lap\"", "\"" + "x".repeat(101) + "\""), "line 7,", "the name of a figure has 101 characters");
        refusedByBoth(FULL.replace("\"200.1 hp\", ", "\"200.1 hp\", ".repeat(1000)), "line 6,", "at most 1000 on each side");
    }

    /** The full publication with more of a kind, each in a line of its own behind the others. */
    private static String full(String kind, int more) {
        String one = switch (kind) {
            case "figures" -> "{\"name\": \"figure %d\", \"before\": \"1 s\", \"after\": \"2 s\"}";
            case "curves" -> "{\"name\": \"%d\", \"unit\": \"hp\", \"before\": {\"file\": \"a\"}, \"after\": {\"file\": \"b\"}}";
            default -> "{\"words\": \"claim %d\", \"figure\": \"lap\"}";
        };
        StringBuilder all = new StringBuilder();
        for (int number = 0; number < more; number++) {
            all.append(String.format(Locale.ROOT, one, number)).append(", ");
        }
        return FULL.replaceFirst("(\"" + kind + "\": \\[)", "$1" + Matcher.quoteReplacement(all.toString()));
    }

    private static void refusedByBoth(String text, String... words) {
        assertThat(errors(text)).isNotEmpty();
        assertThatThrownBy(() -> PublicationJson.read(text, "x.json")).isInstanceOfSatisfying(InputException.class,
                refused -> assertThat(refused.oneLine()).startsWith("x.json").contains(words).doesNotContain("\n"));
    }

    private static List<String> errors(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(resource("/fairpull/schema/publication.schema.json")).validate(text, InputFormat.JSON).stream()
                .map(Object::toString).toList();
    }

    private static String resource(String name) {
        try (InputStream in = PublicationJson.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException trouble) {
            throw new AssertionError(trouble);
        }
    }
}

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
        "\"quotedAfter\": \"best\" | \"quotedAfter\": \"single\" | 15 | procedure.pullsAfter"})
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
        "\"at\": \"5500 rpm\" | \"at\": \"5500 hp\" | engine speed above 0",
        "\"name\": \"lap\" | \"name\": \"power\" | same name",
        "\"unit\": \"hp\", | \"unit\": \"horses\", | no unit of a curve",
        "0.5 % | -0.5 % | standard deviation of 0 or more"})
    void andWhatContradictsItselfInOneLine(String there, String instead, String words) {
        assertThat(FULL).contains(there);
        assertThatThrownBy(() -> PublicationJson.read(FULL.replace(there, instead), "x.json")).isInstanceOfSatisfying(InputException.class,
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

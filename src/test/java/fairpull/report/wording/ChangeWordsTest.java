package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry.Change;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangeWordsTest {
    private static final Path SCHEMA = Path.of("src/main/resources/fairpull/schema/plan.schema.json");

    /** The schema is walked to its leaves, so that a field that joins the plan without words fails here. */
    @Test
    void everyFieldOfTheSchemaHasWords() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(SCHEMA.toFile());
        Set<String> places = new TreeSet<>();
        walk(schema, schema, "", places);

        assertThat(places).hasSizeGreaterThan(90).allSatisfy(place -> assertThat(ChangeWords.name(place)).as(place)
                .isNotEqualTo(place).doesNotContain("Si", "RadPerS", "$", "_"));
        List<String> names = places.stream().map(ChangeWords::name).toList();
        assertThat(names).as("no two fields are called alike").doesNotHaveDuplicates();
    }

    /** Invented plan of the project: the worthwhile gain is 3 hp, 1 hp = 745.69987158227022 W (550 lbf·ft/s, exact). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "question.worthwhileGainSi|2237.099614746811|3728.499357911351|worthwhile gain: 3 hp → 5 hp",
        "question.expectedLevelSi|null|141682.97560063135|expected level: nothing → 190 hp",
        "rig.pullScatter.standardDeviationSi|745.6998715822702||scatter of pulls: 1 hp → nothing",
        "rig.refitScatter.degreesOfFreedom|11|\"inf\"|scatter of refits, its degrees of freedom: 11 → known",
        "sequence.sessions.0.installs.2.countedPulls|5|8|session 1, install 3, counted pulls: 5 → 8",
        "sequence.pullIntervalS|300|420|time from pull to pull: 5 min → 7 min",
        "gates.0.limit.toleranceSi|2|3.5|gate 1, furthest from the reference: 2 K → 3.5 K",
        "gates.3.limit.toleranceSi|3447.3786465841804|6894.757293168361|gate 4, furthest from the reference: 0.0344738 bar → 0.0689476 bar",
        "gates.9.limit.lowSi||353.15|gate 10, lowest: nothing → 353.15 in SI units",
        "curve.bandwidthRadPerS|10.471975511965978|20.943951023931955|bandwidth of curves: 100 rpm → 200 rpm",
        "question.errorRate|0.05|0.01|error rate: 5 % → 1 %",
        "question.deciding.correction|\"none\"|\"sae-j1349\"|deciding measure, its correction: no correction → SAE J1349",
        "rig.kind|\"roller-inertia\"|\"hub\"|kind of rig: roller inertia → hub",
        "sequence.sessions.0.installs.1.unstrapped|true|false|session 1, install 2, car unstrapped: yes → no",
        "rig.movingMass.coastDown.f2Ns2PerM2|0.4|0.5|coast-down force that grows with speed squared: 0.4 N/(m/s)² → 0.5 N/(m/s)²",
        "rig.tyrePressurePa|220000|230000|tyre pressure: 220 kPa → 230 kPa",
        "title|\"a\"|\"b\"|title of the test: “a” → “b”"})
    void aChangeIsSaidInWordsWithItsUnit(String place, String before, String after, String words) throws IOException {
        Change change = new Change(place, before == null ? "" : before, after == null ? "" : after);

        assertThat(new ChangeWords(plan(), List.of(change)).sentence(change).replace('\u202f', ' ')).isEqualTo(words);
    }

    /** A number that was given in another unit than the plan has now must not be read in the one that it has. */
    @Test
    void whereTheUnitWasChangedAsWellTheValueStandsInSi() throws IOException {
        Change gain = new Change("question.worthwhileGainSi", "10", "2237.099614746811");
        Change unit = new Change("question.deciding.unit", "\"N·m\"", "\"hp\"");

        assertThat(new ChangeWords(plan(), List.of(gain, unit)).sentence(gain)).isEqualTo("worthwhile gain: 10 in SI units → 2237.1 in SI units");
    }

    private static Plan plan() throws IOException {
        return TestFolder.readPlan(Path.of("plans/electric-pump/plan.json"));
    }

    private static void walk(JsonNode schema, JsonNode node, String place, Set<String> places) {
        if (node.has("$ref")) {
            walk(schema, schema.at(node.get("$ref").asText().substring(1)), place, places);
        } else if (node.has("oneOf")) {
            node.get("oneOf").forEach(one -> walk(schema, one, place, places));
        } else if (node.has("properties")) {
            List<String> names = new ArrayList<>();
            node.get("properties").fieldNames().forEachRemaining(names::add);
            names.forEach(name -> walk(schema, node.get("properties").get(name), place.isEmpty() ? name : place + "." + name, places));
        } else if (node.has("items")) {
            walk(schema, node.get("items"), place + ".0", places);
        } else if (!node.path("type").asText().equals("null")) {
            places.add(place);
        }
    }
}

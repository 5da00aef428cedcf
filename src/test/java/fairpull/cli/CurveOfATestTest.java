package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The difference curve as the program gives it: of a test by its plan, of a plain table by its options. */
class CurveOfATestTest {
    @TempDir
    private Path folder;

    @Test
    void aTestWithExportsHasACurve() throws IOException {
        JsonNode curve = json("judge", "plans/electric-pump", "--json").path("curve");

        assertThat(curve.path("unit").asText()).isEqualTo("hp");
        assertThat(curve.path("declared").asBoolean()).isFalse();
        assertThat(curve.path("refitScatter").asText()).isEqualTo("band figure");
        assertThat(curve.path("points")).hasSizeGreaterThan(50).allSatisfy(point -> {
            assertThat(point.path("bandLow").asDouble()).isLessThanOrEqualTo(point.path("low").asDouble());
            assertThat(point.path("bandHigh").asDouble()).isGreaterThanOrEqualTo(point.path("high").asDouble());
        });
        assertThat(curve.path("points").get(0).path("speed").asDouble() % 50).isZero();
        assertThat(curve.path("pulls")).hasSize(25).allSatisfy(pull ->
                assertThat(pull.path("gridPeak").asDouble()).isLessThan(pull.path("rawPeak").asDouble()));
        assertThat(Run.of("judge", "plans/electric-pump").out().replaceAll("\\s+", " "))
                .contains("Difference B − A over engine speed", "Not declared before the day");
    }

    @Test
    void aSpeedNamedBeforeTheFirstDataIsHeldAgainstItsOwnInterval() throws IOException {
        Path test = test("--claim", "3hp@4500rpm", "--bandwidth", "100");
        assertThat(Files.readString(test.resolve("plan.json"))).contains("speedRadPerS");
        ok("seal", test.toString());
        takeIn(test);

        JsonNode judged = json("judge", test.toString(), "--json");
        JsonNode claim = judged.path("claims").get(0);
        JsonNode point = at(judged, 4500);
        assertThat(claim.path("claim").asText()).contains("3", "hp at 4500");
        assertThat(claim.path("atSpeed").path("namedBefore").asBoolean()).isTrue();
        assertThat(claim.path("atSpeed").path("low").asDouble()).isCloseTo(point.path("low").asDouble(), within(1e-9));
    }

    @Test
    void aSpeedNamedAfterTheFirstDataIsHeldAgainstTheBand() throws IOException {
        Path test = test("--claim", "3hp");
        ok("seal", test.toString());
        takeIn(test);
        ok("amend", test.toString(), "--set", "question.claims.0.speedRadPerS=4500rpm", "--because", "it looks best there");

        JsonNode judged = json("judge", test.toString(), "--json");
        JsonNode claim = judged.path("claims").get(0);
        assertThat(claim.path("atSpeed").path("namedBefore").asBoolean()).isFalse();
        assertThat(claim.path("atSpeed").path("low").asDouble()).isCloseTo(at(judged, 4500).path("bandLow").asDouble(), within(1e-9));
        assertThat(Run.of("judge", test.toString()).out().replaceAll("\\s+", " ")).contains("band for all speeds, as this one was not named");
    }

    @Test
    void aClaimThatJoinsAfterTheDayIsHeldAgainstTheBandAndListedInWords() throws IOException {
        Path test = test();
        ok("seal", test.toString());
        takeIn(test);
        Run amended = Run.of("amend", test, "--claim", "3hp@4500rpm", "--because", "the maker says so").succeeded();

        assertThat(amended.words()).contains("claim 1: nothing → “at least 3 hp at 4500 rpm”").doesNotContain("{");
        JsonNode claim = json("judge", test.toString(), "--json").path("claims").get(0);
        assertThat(claim.path("atSpeed").path("namedBefore").asBoolean()).isFalse();
        assertThat(Run.of("judge", test).words()).contains("claim 1: nothing → “at least 3").doesNotContain("speedRadPerS");
        Run.of("amend", test, "--claim", "3hp@4500kg", "--because", "why not").refused(2, "expected an engine speed");
    }

    @Test
    void aPlanSealedAfterTheFirstDataNamesNothingBeforeThem() throws IOException {
        Path test = test("--claim", "3hp@4500rpm");
        takeIn(test);
        ok("seal", test.toString());

        assertThat(json("judge", test.toString(), "--json").path("claims").get(0).path("atSpeed").path("namedBefore").asBoolean()).isFalse();
    }

    @Test
    void curvesInAPlainTableAreJudgedWithoutAPlan() throws IOException {
        JsonNode curve = json("judge", "--curves", table("speed [rpm]", "value [hp]").toString(), "--json");

        assertThat(curve.path("unit").asText()).isEqualTo("hp");
        assertThat(curve.path("gains")).hasSize(1);
        assertThat(curve.path("gains").get(0).path("high").asDouble()).isEqualTo(4000);
        assertThat(at(curve, 3000).path("change").asDouble()).isCloseTo(10, within(1.0));
    }

    @Test
    void whatCannotBeUsedIsSaidInOneLine() throws IOException {
        assertThat(Run.of("judge", "--curves", table("sped", "value").toString()).err()).contains("column speed", "there is no such column");
        assertThat(Run.of("judge", "--curves", table("speed [hp]", "value").toString()).err()).contains("is not a unit of engine speed");
        assertThat(Run.of("judge", "plans/electric-pump", "--bandwidth", "50").err()).contains("--bandwidth");
        assertThat(Run.of("new", folder.resolve("x").toString(), "--part-a", "a", "--part-b", "b", "--measure", "peak power in hp",
                "--claim", "3hp@4500kg").err()).contains("expected an engine speed");
    }

    @Test
    void aGridThatIsNamedBeforeTheDayIsTheOneOfTheFinding() throws IOException {
        Path test = test("--grid", "3500-6000/100");
        ok("seal", test.toString());
        takeIn(test);

        JsonNode curve = json("judge", test.toString(), "--json").path("curve");
        assertThat(curve.path("declared").asBoolean()).isTrue();
        assertThat(curve.path("points")).hasSize(26);
        assertThat(curve.path("points").get(0).path("speed").asDouble()).isCloseTo(3500, within(1e-9));
        assertThat(curve.path("points").get(25).path("speed").asDouble()).isCloseTo(6000, within(1e-9));
        JsonNode peak = curve.path("figures").get(0);
        assertThat(peak.path("fromSpeed").asDouble()).isBetween(3500.0, peak.path("toSpeed").asDouble());
        assertThat(peak.path("toSpeed").asDouble()).isLessThanOrEqualTo(6000.000001);
    }

    @Test
    void aGridThatIsNoneIsRefusedInPlainWords() {
        for (String[] wrong : new String[][] {{"3000-6500", "such as 3000-6500/50"}, {"3000-6500/0", "above 0"}, {"0-6500/50", "above 0"},
            {"6500-3000/50", "no room for one step"}, {"3000-6500/0.5", "more than 2000 speeds"}, {"fast", "such as 3000-6500/50"}}) {
            Run.of("new", folder.resolve("x"), "--part-a", "a", "--part-b", "b", "--measure", "peak power in hp", "--grid", wrong[0])
                    .refused(2, "--grid", wrong[1]);
        }
    }

    private Path table(String speed, String value) throws IOException {
        StringBuilder text = new StringBuilder("install,part,pull," + speed + "," + value + "\n");
        for (int install = 0; install < 5; install++) {
            for (int pull = 1; pull <= 3; pull++) {
                for (int rpm = 2000; rpm <= 4000; rpm += 25) {
                    double wobble = 0.3 * Math.sin(rpm / 90.0 + 2.4 * install + 1.7 * pull) + 0.1 * install * (install % 3);
                    text.append(install).append(install % 2 == 0 ? ",A," : ",B,").append(pull).append(',').append(rpm).append(',')
                            .append(rpm / 30.0 + wobble + (install % 2) * 10).append('\n');
                }
            }
        }
        return Files.writeString(folder.resolve("curves.csv"), text);
    }

    private Path test(String... more) {
        Path test = folder.resolve("test");
        String[] words = {"new", test.toString(), "--part-a", "old", "--part-b", "new", "--measure", "mean power 3000-6500 rpm in hp",
            "--expected", "190hp", "--sequence", "ABABA", "--pulls", "5"};
        ok(Stream.concat(Arrays.stream(words), Arrays.stream(more)).toArray(String[]::new));
        return test;
    }

    private static void takeIn(Path test) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/electric-pump"))) {
            String[] exports = files.map(Path::toString).filter(name -> name.matches(".*/[AB]\\d-\\d\\.csv")).sorted().toArray(String[]::new);
            ok(Stream.of(Stream.of("import", test.toString()), Arrays.stream(exports),
                    Stream.of("--corrected", "none")).flatMap(words -> words).toArray(String[]::new));
        }
    }

    private static JsonNode at(JsonNode judged, double rpm) {
        for (JsonNode point : judged.has("curve") ? judged.path("curve").path("points") : judged.path("points")) {
            if (point.path("speed").asDouble() == rpm) {
                return point;
            }
        }
        throw new AssertionError("no point at " + rpm);
    }

    private static void ok(String... words) {
        Run run = Run.of((Object[]) words);
        assertThat(run.status()).as(run.err()).isZero();
    }

    private static JsonNode json(String... words) throws IOException {
        Run run = Run.of((Object[]) words);
        assertThat(run.status()).as(run.err()).isZero();
        return new ObjectMapper().readTree(run.out());
    }
}

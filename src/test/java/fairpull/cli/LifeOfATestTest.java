package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A test from nothing to its report, as a user would run it; what each step leaves in the folder. All figures are invented. */
class LifeOfATestTest {
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2 B2-1 B2-2 A3-1 A3-2";
    private static final double[] POWERS = {100.0, 100.4, 104.1, 103.9, 100.1, 100.3, 104.4, 104.0, 99.9, 100.2};

    /** With equal pulls the estimate is the difference of these, whatever the scatter. */
    private static final double MEAN_OF_A = (100.0 + 100.4 + 100.1 + 100.3 + 99.9 + 100.2) / 6;
    private static final double MEAN_OF_B = (104.1 + 103.9 + 104.4 + 104.0) / 4;

    @TempDir
    private Path folder;

    @Test
    void fromNewToReport() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABABA", "--worthwhile", "2kW", "--expected", "100kW", "--claim", "3kW",
                "--claim", "9kW", "--further", "peak power in kW", "--further", "power at 4000 rpm in kW");
        assertThat(Folders.contents(test)).containsOnlyKeys("", "plan.json");
        Run.of("check", test).succeeded();

        String code = Run.at(Run.NOW.minusDays(1), "seal", test, "--json").json().get("code").asText();
        assertThat(code).matches("[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{2}");
        assertThat(json(test.resolve("seal.json")).get("code").asText()).isEqualTo(code);
        assertThat(Folders.contents(test)).containsOnlyKeys("", "plan.json", "seal.json", "log.jsonl");

        Run.of("amend", test, "--set", "question.worthwhileGainSi=1.5kW", "--because", "the customer asks for less").succeeded();
        Run.of("note", test, "A1-1", "--at", "2026-05-09T09:00:00+02:00", "--condition", "intake-air=20C").succeeded();
        List<Path> exports = SmallTest.exports(folder.resolve("exports"), PULLS, POWERS);
        Run.of(SmallTest.words("import", test, exports, "--corrected", "none")).succeeded();
        for (Path export : exports) {
            assertThat(test.resolve("pulls").resolve(export.getFileName())).hasSameBinaryContentAs(export);
        }

        Run.of("exclude", test, "B1-2", "--because", "lifted early").succeeded();
        JsonNode without = Run.of("judge", test, "--json").json();
        assertThat(fates(without)).containsEntry("B1-2", "excluded").containsEntry("A1-1", "used");
        assertThat(without.get("withExcludedPulls").get("estimate").asDouble()).isCloseTo(MEAN_OF_B - MEAN_OF_A, Offset.offset(1e-9));
        Run.of("exclude", test, "B1-2", "--because", "it was the one before", "--readmit").succeeded();
        Run.of("amend", test, "--set", "question.errorRate=0.04", "--because", "second thoughts").succeeded();

        JsonNode finding = Run.of("judge", test, "--json").json();
        checkFinding(finding, code);
        Path report = folder.resolve("out/report.html");
        Run.of("report", test, "--out", report).succeeded();
        assertThat(SmallTest.read(report)).contains(code, "second thoughts", "the customer asks for less").doesNotContain("http://", "<script src");
        checkChain(test.resolve("log.jsonl"));
        Run.of("judge", test).succeeded();
    }

    private static void checkFinding(JsonNode finding, String code) {
        assertThat(finding.get("estimate").asDouble()).isCloseTo(MEAN_OF_B - MEAN_OF_A, Offset.offset(1e-9));
        assertThat(finding.at("/installMeans/estimate").asDouble()).isCloseTo(MEAN_OF_B - MEAN_OF_A, Offset.offset(1e-9));
        assertThat(finding.get("verdict").asText()).isEqualTo("gain");
        assertThat(finding.get("worthwhile").asText()).isEqualTo("yes");
        assertThat(finding.at("/interval/level").asDouble()).as("as amended").isEqualTo(0.96);
        assertThat(finding.at("/seal/code").asText()).isEqualTo(code);
        assertThat(texts(finding.get("claims"), "standing")).containsExactly("shown", "contradicted");
        assertThat(texts(finding.get("amendments"), "because")).containsExactly("the customer asks for less", "second thoughts");
        assertThat(texts(finding.get("amendments"), "afterFirstData")).containsExactly("false", "true");
        assertThat(texts(finding.get("secondary"), "measure")).containsExactly("peak power", "power at 4000 rpm");
        for (JsonNode secondary : finding.get("secondary")) {
            assertThat(secondary.get("holmP").asDouble()).as("two measures of the same p").isCloseTo(2 * secondary.get("pValue").asDouble(),
                    Offset.offset(1e-12));
        }
        assertThat(texts(finding.get("warnings"))).anyMatch(warning -> warning.contains("After the first data")).noneMatch(
                warning -> warning.contains("by hand"));
    }

    @Test
    void theLogIsOnlyEverAddedTo() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        List<Object[]> steps = List.of(
                new Object[] {"seal", test},
                new Object[] {"note", test, "--remark", "zwölf Grad"},
                SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5)),
                new Object[] {"note", test, "A1-2", "--aborted", "slip"},
                new Object[] {"exclude", test, "B1-1", "--because", "x"},
                new Object[] {"amend", test, "--set", "title=another", "--because", "x"},
                new Object[] {"seal", test, "--again"});
        String before = "";
        for (Object[] step : steps) {
            Run.of(step).succeeded();
            String after = SmallTest.read(test.resolve("log.jsonl"));
            assertThat(after).startsWith(before).hasSizeGreaterThan(before.length());
            before = after;
        }
        checkChain(test.resolve("log.jsonl"));
    }

    /** The order of the log tells before from after, whatever the clock says. */
    @Test
    void amendmentsAreBeforeOrAfterTheFirstDataByTheLog() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.of("seal", test).succeeded();
        Run.at(Run.NOW.plusYears(1), "amend", test, "--set", "title=one", "--because", "early").succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5))).succeeded();
        Run.at(Run.NOW.minusYears(1), "amend", test, "--set", "title=two", "--because", "late").succeeded();

        JsonNode finding = Run.of("judge", test, "--json").json();

        assertThat(texts(finding.get("amendments"), "afterFirstData")).containsExactly("false", "true");
        assertThat(Run.of("judge", test).succeeded().out()).contains("early", "late");
    }

    @Test
    void aPlanSealedAgainOrLateSaysSo() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5))).succeeded();
        assertThat(warnings(test)).anyMatch(warning -> warning.contains("not sealed"));
        Run.of("seal", test).succeeded();
        Run.of("seal", test).refused(3, "sealed already", "--again");
        assertThat(warnings(test)).anyMatch(warning -> warning.contains("sealed only after data"));
        Run.of("seal", test, "--again").succeeded();
        assertThat(warnings(test)).anyMatch(warning -> warning.contains("sealed 2 times"));
        assertThat(Run.of("judge", test).succeeded().out()).contains("sealed 2 times");
    }

    @Test
    void typedTimesAreAGainWhereTheyAreShorter() {
        Path test = folder.resolve("strip");
        Run.of("new", test, "--part-a", "a", "--part-b", "b", "--measure", "typed elapsed time in s", "--further",
                "typed trap speed in mph", "--sequence", "ABABA", "--pulls", "1", "--warm-ups", "0", "--rig", "strip").succeeded();
        String[] times = {"13.40s", "13.02 s", "13.41", "13020 ms", "13.39s"};
        String[] pulls = {"A1-1", "B1-1", "A2-1", "B2-1", "A3-1"};
        for (int i = 0; i < pulls.length; i++) {
            Run.of("note", test, pulls[i], "--value", times[i], "--value", "trap speed=" + (104 + 2 * (i % 2)) + "." + i + "mph").succeeded();
        }
        Run.of("note", test, "A1-1", "--value", "13.5s").refused(3, "A1-1", "already");
        Run.of("note", test, "A1-2", "--value", "13.5s").refused(3, "A1-2");
        Run.of("note", test, "A1-1", "--value", "13.5hp").refused(2, "--value");

        JsonNode finding = Run.of("judge", test, "--json").json();

        assertThat(finding.get("estimate").asDouble()).isCloseTo(13.02 - 13.40, Offset.offset(1e-9));
        assertThat(finding.get("verdict").asText()).isEqualTo("gain");
        assertThat(finding.at("/secondary/0/verdict").asText()).isEqualTo("gain");
        assertThat(finding.at("/secondary/0/unit").asText()).isEqualTo("mph");
    }

    @Test
    void aDrawnOrderIsTheSameForTheSameSeed() throws IOException {
        List<String> orders = new ArrayList<>();
        for (int seed = 1; seed <= 20; seed++) {
            Path one = SmallTest.make(folder.resolve("one" + seed), "AABBAABB|ABAB", "--draw", seed);
            Path other = SmallTest.make(folder.resolve("other" + seed), "BABABABA|BBAA", "--draw", seed);
            String order = Run.of("check", one, "--json").json().get("sequence").asText();
            assertThat(order).matches("[AB]{8}\\|[AB]{4}");
            assertThat(order.chars().filter(letter -> letter == 'A').count()).isEqualTo(6);
            assertThat(json(one.resolve("plan.json")).at("/sequence/seed").asInt()).isEqualTo(seed);
            assertThat(Run.of("check", SmallTest.make(folder.resolve("again" + seed), "AABBAABB|ABAB", "--draw", seed), "--json").json()
                    .get("sequence").asText()).isEqualTo(order);
            assertThat(Run.of("check", other, "--json").json().get("sequence").asText()).hasSameSizeAs(order);
            orders.add(order);
        }
        assertThat(orders.stream().distinct().count()).as("orders out of 420").isGreaterThan(10);
    }

    @Test
    void aDrawnOrderIsJudgedWithItsRandomisationTest() {
        Path test = SmallTest.make(folder.resolve("test"), "AB", "--draw", 7, "--pulls", "1");
        Run.of("amend", test, "--set", "title=x", "--because", "x").refused(3, "not sealed");
        Path drawn = SmallTest.make(folder.resolve("drawn"), "AABB", "--draw", 7, "--pulls", "1");
        Run.of(SmallTest.words("import", drawn, SmallTest.exports(folder, "A1-1 A2-1 B1-1 B2-1", 100, 100.4, 104, 104.3))).succeeded();

        JsonNode finding = Run.of("judge", drawn, "--json").json();

        assertThat(finding.at("/randomisation/orders").asInt()).as("4 over 2").isEqualTo(6);
        assertThat(finding.at("/randomisation/p").asDouble()).as("the order as run and its mirror").isCloseTo(1.0 / 3, Offset.offset(1e-12));
    }

    @Test
    void percentConvertsThroughTheExpectedLevel() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--expected", "200kW", "--worthwhile", "1.5%", "--pull-scatter", "0.5%",
                "--refit-scatter", "0.25%", "--refit-df", "inf", "--claim", "2%");

        JsonNode plan = json(test.resolve("plan.json"));

        assertThat(plan.at("/question/worthwhileGainSi").asDouble()).isEqualTo(3000);
        assertThat(plan.at("/rig/pullScatter/standardDeviationSi").asDouble()).isEqualTo(1000);
        assertThat(plan.at("/rig/pullScatter/degreesOfFreedom").asDouble()).isZero();
        assertThat(plan.at("/rig/refitScatter/standardDeviationSi").asDouble()).isEqualTo(500);
        assertThat(plan.at("/rig/refitScatter/degreesOfFreedom").asText()).isEqualTo("inf");
        assertThat(plan.at("/question/claims/0/atLeastSi").asDouble()).isEqualTo(4000);
    }

    @Test
    void amendmentsTakeAmountsOnlyInUnitsThatBelongThere() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--expected", "200kW", "--worthwhile", "3kW");
        Run.of("seal", test).succeeded();
        Map<String, String> before = Folders.contents(test);
        for (String wrong : List.of("question.worthwhileGainSi=3s", "sequence.swapS=4hp", "question.powerWanted=80%",
                "gates.0.limit.toleranceSi=3bar", "sequence.sessions.0.installs.0.countedPulls=2min", "question.deciding.definition.highRadPerS=6000Nm",
                ".=1", "..=1", "question=", "nothing.here=1", "sequence.sessions.0.installs.0.countedPulls=0", "title= ")) {
            Run.of("amend", test, "--set", wrong, "--because", "x").refused(3);
        }
        Run.of("amend", test, "--set", "title=test", "--because", "x").refused(2, "nothing changes");
        assertThat(Folders.contents(test)).isEqualTo(before);

        Run.of("amend", test, "--set", "question.worthwhileGainSi=2%", "--set", "sequence.swapS=25min", "--set",
                "gates.0.limit.toleranceSi=1.5°C", "--set", "question.deciding.definition.highRadPerS=6500rpm", "--because", "x").succeeded();

        JsonNode plan = json(test.resolve("plan.json"));
        assertThat(plan.at("/question/worthwhileGainSi").asDouble()).isEqualTo(4000);
        assertThat(plan.at("/sequence/swapS").asDouble()).isEqualTo(1500);
        assertThat(plan.at("/gates/0/limit/toleranceSi").asDouble()).isEqualTo(1.5);
        assertThat(plan.at("/question/deciding/definition/highRadPerS").asDouble()).isCloseTo(6500 * Math.PI / 30, Offset.offset(1e-9));
    }

    @Test
    void severalSessionsAreJudgedTogether() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA|BAB", "--pulls", "1");
        Run.of(SmallTest.words("import", test,
                SmallTest.exports(folder, "A1-1 B1-1 A2-1 B2-1 A3-1 B3-1", 100, 104, 100.2, 109, 105.1, 109.2))).succeeded();

        JsonNode finding = Run.of("judge", test, "--json").json();

        // By hand: within day 1 B − A is 3.9, within day 2 it is 4.0, both with two of one part and one of the other.
        assertThat(finding.get("estimate").asDouble()).isCloseTo(3.95, Offset.offset(1e-9));
        assertThat(texts(finding.get("installs"), "session")).containsExactly("day 1", "day 1", "day 1", "day 2", "day 2", "day 2");
        assertThat(finding.get("returnCheck").isNull()).isTrue();
    }

    @Test
    void anAbortedPullMayBeTakenAgain() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.of("note", test, "B1-2", "--aborted", "slip").succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 A1-2 B1-1 A2-1 A2-2", 100, 100.2, 104, 100.5, 100.1)))
                .succeeded();
        assertThat(fates(Run.of("judge", test, "--json").json())).containsEntry("B1-2", "aborted");
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "B1-2", 104.2))).succeeded();
        assertThat(fates(Run.of("judge", test, "--json").json())).containsEntry("B1-2", "used");
        Run.of("note", test, "B1-2", "--aborted", "slip").refused(3, "B1-2", "exclude");
    }

    @Test
    void filesAreTakenAllOrNone() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        List<Path> good = SmallTest.exports(folder.resolve("in"), "A1-1 A1-2", 100, 100.2);
        Map<String, String> before = Folders.contents(test);
        List<Path> bad = List.of(
                SmallTest.write(folder.resolve("in/B1-1.csv"), "Engine Speed (rpm),Power (kW)\n2000,ten\n"),
                SmallTest.write(folder.resolve("in/B1-2.csv"), ""),
                SmallTest.write(folder.resolve("in/A2-1.csv"), "Engine Speed (rpm),Power (kW)\n2000,100\n2500,100\n3500,100\n"),
                SmallTest.export(folder.resolve("in/A2-3.csv"), 100.1),
                SmallTest.export(folder.resolve("in/C1-1.csv"), 100.1),
                SmallTest.export(folder.resolve("in/B9-1.csv"), 100.1),
                SmallTest.export(folder.resolve("in/again/A1-2.csv"), 100.3),
                Files.copy(good.get(0), folder.resolve("in/A2-2.csv")),
                good.get(0),
                folder.resolve("in/A2-2-none.csv"));
        for (Path one : bad) {
            Run run = Run.of("import", test, good.get(0), good.get(1), one);
            run.refused(3);
            assertThat(run.err()).contains(one.toString().endsWith("A2-3.csv") ? "A2-3" : one.toString().endsWith("B9-1.csv") ? "B9"
                    : one.getFileName().toString());
            assertThat(Folders.contents(test)).as("after %s", one).isEqualTo(before);
        }
        Run.of(SmallTest.words("import", test, good)).succeeded();
        Run.of("import", test, good.get(0)).refused(3, "A1-1", "already");
        Run.of("import", test, folder.resolve("in/A2-2.csv")).refused(3, "A2-2.csv", "the same bytes as pull A1-1");
        Run.of("import", test, good.get(0), "--install", "B1", "--pull", "2").refused(3, "the same bytes as pull A1-1");
    }

    @Test
    void filesOfOneInstallAreNumberedOn() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.of("note", test, "A1-1", "--aborted", "slip").succeeded();
        JsonNode taken = Run.of("import", test, SmallTest.export(folder.resolve("run 17.csv"), 100), "--install", "A1", "--json").json();
        assertThat(texts(taken.get("taken"), "pull")).containsExactly("A1-2");
        assertThat(taken.at("/taken/0/values/0/value").asDouble()).isCloseTo(100, Offset.offset(1e-9));
        Run.of("import", test, SmallTest.export(folder.resolve("run 18.csv"), 100.1), "--install", "B1", "--pull", "2").succeeded();
        Run.of("import", test, SmallTest.export(folder.resolve("run 19.csv"), 100.2), "--install", "A1", "--warm-up").refused(3, "A1-W1");
    }

    /** Conditions may be noted after the import, so whether they suffice is asked when judging ({@link CorrectedPlanTest}). */
    @Test
    void anExportCorrectedOtherwiseIsTakenAndNotJudgedWithoutItsAir() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", "sae-j1349");
        Run.of("import", test, SmallTest.export(folder.resolve("A1-1.csv"), 100), "--corrected", "din-70020").succeeded();
        Run.of("judge", test).refused(3, "A1-1", "din-70020", "sae-j1349", "intake air", "station pressure", "relative humidity");
    }

    /** A pull may be left out for the very reason that its export no longer has a value, or is gone. */
    @Test
    void aPullWithoutAValueCanStillBeLeftOut() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABABA");
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder.resolve("in"), PULLS, POWERS))).succeeded();
        Run.of("seal", test).succeeded();
        Files.delete(test.resolve("pulls/A3-2.csv"));
        Run.of("judge", test).refused(3, "A3-2.csv");
        Run.of("exclude", test, "A3-2", "--because", "the file is lost").succeeded();

        JsonNode finding = Run.of("judge", test, "--json").json();

        assertThat(fates(finding)).containsEntry("A3-2", "excluded");
        Run.of("amend", test, "--set", "question.deciding.definition.lowRadPerS=1000rpm", "--because", "wider").succeeded();
        Run.of("judge", test).refused(3, "A1-1.csv", "does not cover the band", "fairpull exclude TEST A1-1");
    }

    @Test
    void theVerbsThatWriteAnswerInJsonToo() {
        Path test = folder.resolve("test");
        assertThat(Run.of("new", test, "--part-a", "a", "--part-b", "b", "--measure", "mean power 3000-6000 rpm in kW", "--pulls", "1", "--sequence",
                "ABA", "--json").json().get("countedPulls").asInt()).isEqualTo(3);
        assertThat(Run.of("seal", test, "--json").json().get("planSha256").asText()).hasSize(64);
        assertThat(Run.of("note", test, "A1-1", "--remark", "dry", "--json").json().at("/noted/0").asText()).isEqualTo("A1-1");
        Path book = SmallTest.write(folder.resolve("book.csv"), "pull,intake-air (°C)\nA1-1,20\nB1-1,21\n");
        assertThat(texts(Run.of("note", test, "--table", book, "--json").json().get("noted"))).containsExactly("A1-1", "B1-1");
        assertThat(Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5), "--json")).json()
                .get("taken")).hasSize(3);
        assertThat(Run.of("exclude", test, "A1-1", "--because", "x", "--json").json().get("counts").asBoolean()).isFalse();
        assertThat(Run.of("exclude", test, "A1-1", "--readmit", "--because", "x", "--json").json().get("counts").asBoolean()).isTrue();
        assertThat(Run.of("amend", test, "--set", "title=x", "--because", "y", "--json").json().at("/changes/0/place").asText())
                .isEqualTo("title");
        assertThat(Run.of("report", test, "--out", folder.resolve("r.html"), "--json").json().get("verdict").asText()).isNotEmpty();
        assertThat(Run.of("import", test, folder.resolve("A1-1.csv"), "--preview", "--json").json().get("files")).hasSize(1);
    }

    @Test
    void readingsAreTakenOnlyWithAUnitAndWithinReason() throws IOException {
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Map<String, String> before = Folders.contents(test);
        for (String wrong : List.of("humidity=45", "intake-air=20", "intake-air=-500C", "intake-air=0K",
                "barometer=-3hPa", "barometer=20C", "coolant=hot", "coolant=1e999C")) {
            Run.of("note", test, "A1-1", "--condition", wrong).refused(3, "A1-1", wrong.substring(wrong.indexOf('=') + 1), "such as");
        }
        for (String wrong : List.of("humidity=145%", "humidity=-1%")) {
            Run.of("note", test, "A1-1", "--condition", wrong).refused(3, "A1-1", "relative humidity", "between 0 and 100 %");
        }
        Run.of("note", test, "A1-1", "--condition", "humidity=45%", "--condition", "humidity=46%").refused(2, "--condition", "twice");
        assertThat(Folders.contents(test)).isEqualTo(before);
        Run.of("note", test, "A1-1", "--condition", "humidity=46%", "--condition", "barometer=29.92inHg", "--condition",
                "intake-air=77F").succeeded();
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).contains("\"humidity\":0.46").containsPattern("\"intake-air\":298\\.1(5|499)");
    }

    @Test
    void whatDoesNotBearOnTheFindingIsNotSaid() {
        Path power = SmallTest.make(folder.resolve("power"), "ABA", "--drift", "linear", "--refit-scatter", "1kW", "--refit-df", "9");
        Path time = SmallTest.make(folder.resolve("time"), "ABA");
        List<Path> exports = SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5);
        Run.of(SmallTest.words("import", power, exports)).succeeded();
        Run.of(SmallTest.words("import", time, exports)).succeeded();
        assertThat(warnings(power)).anyMatch(said -> said.startsWith("The times of the pulls come from the plan"))
                .anyMatch(said -> said.startsWith("It is not known whether the values were already corrected"));
        assertThat(warnings(time)).noneMatch(said -> said.startsWith("The times of the pulls come from the plan"));
    }

    /** A word that begins with @ is that word, not a file of arguments. */
    @Test
    void nothingIsReadOutOfAWordThatBeginsWithAt() throws IOException {
        Path words = SmallTest.write(folder.resolve("words"), "--because");
        Path test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.of("note", test, "--remark", "@" + words).succeeded();
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).contains("@" + words);
    }

    private static void checkChain(Path log) {
        String previous = "";
        int number = 0;
        for (String line : SmallTest.read(log).split("\n")) {
            number++;
            JsonNode record = tree(line);
            assertThat(record.get("number").asInt()).isEqualTo(number);
            assertThat(record.get("previousSha256").asText()).isEqualTo(sha256(previous));
            assertThat(OffsetDateTime.parse(record.get("at").asText())).isNotNull();
            previous = line;
        }
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static Map<String, String> fates(JsonNode finding) {
        Map<String, String> fates = new TreeMap<>();
        finding.get("pulls").forEach(pull -> fates.put(pull.get("pull").asText(), pull.get("fate").asText()));
        return fates;
    }

    private static List<String> warnings(Path test) {
        return texts(Run.of("judge", test, "--json").json().get("warnings"));
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
    }

    private static List<String> texts(JsonNode list, String key) {
        return StreamSupport.stream(list.spliterator(), false).map(one -> one.get(key).asText()).toList();
    }

    private static JsonNode json(Path file) {
        return tree(SmallTest.read(file));
    }

    private static JsonNode tree(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (IOException noJson) {
            throw new AssertionError(noJson);
        }
    }
}

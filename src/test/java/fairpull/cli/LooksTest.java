package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planned looks from the words typed to the finding. Levels: computed/group-sequential-scipy, see the first test. */
class LooksTest {
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2 B2-1 B2-2 A3-1 A3-2";
    private static final double[] KILOWATTS = {100, 100.4, 103, 103.3, 100.2, 100.1, 103.2, 103.1, 99.9, 100.3};

    @TempDir
    private Path folder;

    /** O'Brien-Fleming-like, 0.05, at 5/9 and 1 of the information: levels 0.00527407 and 0.04830665 by make.py of group-sequential-scipy. */
    @Test
    void sizeSaysWhereLooksFallAndWhatTheyCost() {
        Object[] plain = {"size", "--sequence", "ABABA", "--pull-scatter", "1.2", "--refit-scatter", "0.6", "--gain", "3", "--json"};
        JsonNode single = Run.of(plain).json();
        JsonNode looked = Run.of("size", "--sequence", "ABABA", "--pull-scatter", "1.2", "--refit-scatter", "0.6", "--gain", "3", "--json",
                "--looks", "of:3,5").json();

        assertThat(single.has("looks")).isFalse();
        assertThat(looked.get("inflation").asDouble()).isBetween(1.0, 1.1);
        assertThat(looked.get("looks").get(0).get("informationFraction").asDouble()).isCloseTo(5.0 / 9, within(1e-12));
        assertThat(looked.get("looks").get(0).get("level").asDouble()).isCloseTo(0.00527407, within(1e-8));
        assertThat(looked.get("looks").get(1).get("errorSpent").asDouble()).isCloseTo(0.05, within(1e-9));
        assertThat(looked.get("power").asDouble()).isLessThan(single.get("power").asDouble());
        assertThat(looked.get("detectableGain").asDouble()).isGreaterThan(single.get("detectableGain").asDouble());
        assertThat(looked.get("warnings").toString()).contains("The look after 3 installs has 1 degree of freedom without a rig record",
                "a chance of less than 1\u202f%", "name a record", "put the look later");
    }

    @Test
    void aPlanWithLooksFitsTheSchemaAndOneWithoutDoesNotNameThem() throws Exception {
        Path with = SmallTest.make(folder.resolve("with"), "ABABA", "--looks", "pocock:3,5");
        Path without = SmallTest.make(folder.resolve("without"), "ABABA");
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("src/main/resources/fairpull/schema/plan.schema.json")), InputFormat.JSON);

        assertThat(schema.validate(SmallTest.read(with.resolve("plan.json")), InputFormat.JSON)).isEmpty();
        assertThat(SmallTest.read(with.resolve("plan.json"))).contains("\"pocock\"");
        assertThat(SmallTest.read(without.resolve("plan.json"))).doesNotContain("looks");
    }

    @Test
    void theLookOfTheLogSetsTheLevel() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--looks", "of:3,5", "--worthwhile", "1kW");
        Run.of("seal", test).succeeded();
        take(test, 0, 6);

        JsonNode unlogged = Run.of("judge", test, "--json").json();
        assertThat(unlogged.get("warnings").toString()).contains("Look 1 is not in the log");
        JsonNode first = Run.of("judge", test, "--look", "--json").json();
        assertThat(first.get("look").get("number").asInt()).isEqualTo(1);
        assertThat(first.get("look").get("level").asDouble()).isCloseTo(0.00527407, within(1e-8));
        assertThat(first.get("interval").get("level").asDouble()).isCloseTo(1 - 0.00527407, within(1e-8));
        assertThat(first.get("warnings").toString()).contains("Look 1 of 2").doesNotContain("not in the log", "never came in");
        assertThat(first.get("verdict").asText()).as("three installs, one degree of freedom").isEqualTo("undecided");

        Run.of("judge", test, "--look", "--json").json();
        assertThat(SmallTest.read(test.resolve("log.jsonl")).split("\"look\"")).as("the same look is logged once").hasSize(2);

        Path report = folder.resolve("look.html");
        Run.of("report", test, "--out", report, "--without-identity").succeeded();
        assertThat(SmallTest.read(report).replaceAll("[\\s\u202f]+", " ")).contains("Look 1 of 2 planned: judged at an error rate of 0.527 %",
                "Looked at after 3 and 5 installs", "99.5 % interval");
        assertThat(SmallTest.read(report)).doesNotContain("99.47");

        take(test, 6, 10);
        JsonNode last = Run.of("judge", test, "--look", "--json").json();
        assertThat(last.get("look").get("number").asInt()).isEqualTo(2);
        assertThat(last.get("interval").get("level").asDouble()).isCloseTo(1 - 0.04830665, within(1e-7));
        assertThat(last.get("verdict").asText()).isEqualTo("gain");
        assertThat(last.get("warnings").toString()).contains("Look 2 of 2").doesNotContain("not planned", "chain");
        Run.of("check", test).succeeded();
    }

    /** Neither verdict nor p-value nor interval, in no form, and nothing in the log; at a look and at the end all of them. */
    @Test
    void betweenTheLooksNothingIsTold() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--looks", "of:3,5", "--worthwhile", "1kW");
        Run.of("seal", test).succeeded();
        nothingIsTold(test, "no pull has come in yet", "the planned look, after A2", "A1-1");
        take(test, 0, 4);
        nothingIsTold(test, "4 of 10 counted pulls are in", "no verdict before the planned look, after A2", "A2-1");
        take(test, 4, 5);
        nothingIsTold(test, "5 of 10", "Missing until then: A2-2");
        take(test, 5, 6);
        assertThat(Run.of("judge", test, "--json").json().has("verdict")).as("exactly at a look").isTrue();
        Run.of("judge", test, "--look").succeeded();
        Run.of("judge", test).succeeded();
        take(test, 6, 7);
        nothingIsTold(test, "7 of 10", "no verdict before the end, after A3", "B2-2");
        take(test, 7, 9);
        nothingIsTold(test, "9 of 10", "A3-2");
        take(test, 9, 10);
        JsonNode end = Run.of("judge", test, "--json").json();
        assertThat(end.get("verdict").asText()).isEqualTo("gain");
        assertThat(end.get("warnings").toString()).doesNotContain("under way");
    }

    @Test
    void aDayThatWasEndedBetweenLooksIsJudgedAtTheStrictestLevelAndSaysSo() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--looks", "of:3,5");
        Run.of("seal", test).succeeded();
        take(test, 0, 8);
        nothingIsTold(test, "8 of 10", "A3-1", "--end-day");
        Run.of("note", test, "--end-day", "rain").succeeded();
        JsonNode ended = Run.of("judge", test, "--json").json();
        assertThat(ended.get("look").get("number").asInt()).isZero();
        assertThat(ended.get("interval").get("level").asDouble()).as("the strictest").isCloseTo(1 - 0.00527407, within(1e-8));
        assertThat(ended.get("warnings").toString()).contains("No look is planned after 4 installs", "ended before all", "rain");
    }

    private void nothingIsTold(Path test, String... words) {
        String log = SmallTest.read(test.resolve("log.jsonl"));
        Path report = folder.resolve("early.html");
        Run.of("judge", test).refused(3, words);
        Run.of("judge", test, "--json").refused(3, words);
        Run.of("report", test, "--out", report, "--csv", folder.resolve("early")).refused(3, words);
        assertThat(Run.of("judge", test, "--look").status()).isEqualTo(3);
        assertThat(report).doesNotExist();
        assertThat(folder.resolve("early")).doesNotExist();
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).isEqualTo(log);
    }

    /** A record decides at any look; a later look has degrees of freedom of its own. */
    @Test
    void onlyLooksThatDecideLittleAreWarnedOf() {
        Object[] plan = {"size", "--pull-scatter", "1.2", "--refit-scatter", "0.6", "--gain", "3", "--json"};
        for (String better : new String[] {"--sequence ABABA --looks of:3,5 --refit-df 11", "--sequence ABABABA --looks of:5,7",
            "--sequence ABBAABBA --looks pocock:4,8"}) {
            Object[] words = Stream.concat(Arrays.stream(plan), Arrays.stream(better.split(" "))).toArray();
            assertThat(Run.of(words).json().get("warnings").toString()).doesNotContain("put the look later");
        }
    }

    @Test
    void aLookThatThePlanDoesNotHaveIsRefused() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA");
        take(test, 0, 6);
        String log = SmallTest.read(test.resolve("log.jsonl"));

        Run.of("judge", test, "--look").refused(3, "its plan has no looks", "judge it without --look");
        assertThat(SmallTest.read(test.resolve("log.jsonl"))).isEqualTo(log);
        assertThat(Run.of("judge", test, "--json").json().get("warnings").toString()).doesNotContain("not planned");
    }

    @Test
    void checkSaysWhichLooksCannotBeJudged() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--looks", "of:3,5", "--drift", "linear");
        assertThat(Run.of("check", test).succeeded().out().replaceAll("\\s+", " ")).contains("Looked at after 3 and 5 installs",
                "The look after 3 installs cannot be judged without a rig record, it needs 4");
        Path fewer = SmallTest.make(folder.resolve("u"), "ABABA", "--looks", "of:3,5");
        assertThat(Run.of("check", fewer).succeeded().out().replaceAll("\\s+", " ")).contains(
                "The look after 3 installs has 1 degree of freedom without a rig record", "the look decides next to nothing",
                "The look after 5 installs has 3 degrees of freedom");
        assertThat(Run.of("new", folder.resolve("v"), "--part-a", "a", "--part-b", "b", "--measure", "peak power in hp", "--looks",
                "of:3,5", "--worthwhile", "3hp", "--pull-scatter", "1.2hp", "--refit-scatter", "0.6hp").succeeded().out())
                .contains("The look after 3 installs has 1 degree of freedom", "put the look later");
    }

    @Test
    void badLooksAreRefused() {
        Run.of("new", folder.resolve("x"), "--part-a", "a", "--part-b", "b", "--measure", "peak power in hp", "--looks", "of:4,5")
                .refused(2, "back at A", "after 4 installs");
        Run.of("new", folder.resolve("x"), "--part-a", "a", "--part-b", "b", "--measure", "peak power in hp", "--looks", "of:3,7")
                .refused(2, "after 5 installs, not after 7");
        Run.of("size", "--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "1", "--looks", "5,3")
                .refused(2, "--looks", "of:3,5");
        Run.of("size", "--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "1", "--looks", "of:5")
                .refused(2, "--looks", "two or more");
        Run.of("judge", "--table", "src/test/resources/computed/judge-lme4-pbkrtest/23-ABABA-n5-si07.csv", "--look").refused(2, "--look");
        Run.of("judge", SmallTest.make(folder.resolve("y"), "ABABA", "--looks", "of:3,5"), "--look").refused(3, "no pull has come in");
    }

    private void take(Path test, int from, int to) {
        String[] names = Arrays.copyOfRange(PULLS.split(" "), from, to);
        var files = SmallTest.exports(folder.resolve("exports"), String.join(" ", names), Arrays.copyOfRange(KILOWATTS, from, to));
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rig record from table to plan and seal, and what is refused on the way. */
class RigVerbTest {
    private static final String MEASURE = "mean power 3000-6500 rpm in hp";
    private static final Path COMPUTED = Path.of("src/test/resources/computed/rig-r");

    @TempDir
    private Path folder;

    /** The figures of R for the same table (computed/rig-r), as percent of 190. */
    @Test
    void addsATableAndSaysItsLayers() {
        JsonNode added = add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped", "--json").json();

        assertThat(added.at("/together/pull/percent").asDouble()).isCloseTo(100 * Math.sqrt(0.793720370370370) / 190, offset(1e-7));
        assertThat(added.at("/together/refit/percent").asDouble()).isCloseTo(100 * Math.sqrt(0.916597685185186) / 190, offset(1e-7));
        assertThat(added.at("/together/day/percent").asDouble()).isCloseTo(100 * Math.sqrt(1.314489351851849) / 190, offset(1e-7));
        assertThat(added.at("/together/refit/degreesOfFreedom").asDouble()).isCloseTo(8.05233162497452, offset(1e-6));
        assertThat(added.at("/together/repeatabilityLimitPercent/oneInstall").asDouble())
                .isCloseTo(2.77 * 100 * Math.sqrt(0.793720370370370) / 190, offset(1e-6));
        assertThat(Path.of(added.at("/file").asText())).isNotEmptyFile().hasParent(records());
    }

    @Test
    void aPlanTakesTheMatchingRecordAndItsSealKeepsIt() {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped").succeeded();
        Run made = plan("--expected", "200hp", "--rig-name", "Rollers 1", "--record", records()).succeeded();

        assertThat(made.out()).contains("Rig record used: rollers 1", "strapped down anew");
        JsonNode seal = json(folder.resolve("test/plan.json"), Run.of("seal", folder.resolve("test")), "test/seal.json");
        assertThat(seal.at("/refitScatter/origin").asText()).isEqualTo("rig-record");
        assertThat(seal.at("/refitScatter/degreesOfFreedom").asDouble()).isCloseTo(8.05233162497452, offset(1e-6));
        // relative on 190 hp, in SI on the expected 200 hp; hp = 745.6998715822702 W
        assertThat(seal.at("/refitScatter/standardDeviationSi").asDouble())
                .isCloseTo(Math.sqrt(0.916597685185186) / 190 * 200 * 745.6998715822702, offset(1e-3));
    }

    @Test
    void aRecordOfSmoothedCurvesMatchesAPlanOfTheSameBandwidthOnly() {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped", "--bandwidth", "100rpm").succeeded();
        List<Object> words = List.of("--expected", "200hp", "--rig-name", "rollers 1", "--record", records());

        plan(words.toArray()).refused(3, "no rig record matches", "curves as exported", "another bandwidth (bandwidth 100");
        plan(with(words, "--bandwidth", "150rpm")).refused(3, "another bandwidth");
        plan(with(words, "--bandwidth", "0")).refused(2, "--bandwidth", "above 0");

        assertThat(plan(with(words, "--bandwidth", "100")).succeeded().words()).contains("Rig record used", "bandwidth 100 rpm");
        Path test = folder.resolve("test");
        assertThat(SmallTest.read(test.resolve("plan.json"))).contains("\"curve\"").doesNotContain("\"grid\"");
        assertThat(Run.of("check", test).words()).contains("Curves over engine speed: bandwidth 100 rpm.");
        Run.of("seal", test).succeeded();
        Run.of("amend", test, "--set", "curve.bandwidthRadPerS=120rpm", "--because", "agreed").succeeded();
        assertThat(Run.of("check", test).words()).contains("bandwidth 120 rpm");
    }

    @Test
    void aValueThatIsNotReadOffACurveHasNoBandwidth() {
        Path table = COMPUTED.resolve("balanced-6x3x4.csv");
        Run.of("rig", "add", table, "--records", records(), "--name", "strip", "--measure", "typed trap speed in mph", "--level", "190mph",
                "--restrapped", "--bandwidth", "100").refused(2, "--bandwidth", "leave it out");
    }

    @Test
    void noOtherRecordIsTakenSilently() throws IOException {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped").succeeded();
        List<List<Object>> others = List.of(List.of("--straps-stay"), List.of("--correction", "sae-j1349"), List.of("--rig-name", "rollers 2"));
        for (List<Object> other : others) {
            List<Object> words = new ArrayList<>(List.of("--expected", "200hp", "--record", records()));
            if (!other.contains("--rig-name")) {
                words.addAll(List.of("--rig-name", "rollers 1"));
            }
            words.addAll(other);
            plan(words.toArray()).refused(3, "no rig record matches", "the nearest are of", "--starting-guess", "own data");
        }
        Files.createDirectories(folder.resolve("empty"));
        plan("--expected", "200hp", "--record", folder.resolve("empty")).refused(3, "no rig record matches", "the folder holds none");
        plan("--expected", "200hp", "--record", folder.resolve("nowhere")).refused(3, "no such folder");
        plan("--record", records(), "--rig-name", "rollers 1").refused(2, "--record", "--expected");
        plan("--expected", "200hp", "--record", records(), "--refit-scatter", "1hp").refused(2, "--record", "contradicts");
        assertThat(folder.resolve("test")).doesNotExist();
    }

    @Test
    void aStartingGuessIsLabelledEverywhere() {
        Run made = plan("--expected", "200hp", "--starting-guess", "--json").succeeded();
        JsonNode pull = made.json().at("/scatter/pull");
        assertThat(pull.at("/origin").asText()).isEqualTo("starting-guess");
        assertThat(pull.at("/standardDeviationSi").asDouble()).isCloseTo(0.007 * 200 * 745.6998715822702, offset(1e-6));
        assertThat(made.json().at("/scatter/refit/standardDeviationSi").asDouble()).isCloseTo(0.01 * 200 * 745.6998715822702, offset(1e-6));
        assertThat(made.json().at("/scatter/refit/degreesOfFreedom").asDouble()).isEqualTo(4);
        assertThat(made.json().at("/scatter/sentences").toString()).contains("no source");
        assertThat(Run.of("check", folder.resolve("test")).succeeded().out()).contains("starting guess");
        Run.of("new", folder.resolve("time"), "--part-a", "a", "--part-b", "b", "--measure", "time 60-100 km/h in s", "--expected", "6s",
                "--starting-guess").refused(2, "--starting-guess", "only for power and torque");
    }

    @Test
    void whereNoRecordMatchesTheGuessAskedForSaysSo() {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--straps-stay").succeeded();
        Run made = plan("--expected", "200hp", "--rig-name", "rollers 1", "--record", records(), "--starting-guess").succeeded();
        assertThat(made.out()).contains("No rig record matches", "other straps", "Starting guess used");
    }

    @Test
    void theSamePullsCountOnce() throws IOException {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped").succeeded();
        Path copy = Files.copy(COMPUTED.resolve("balanced-6x3x4.csv"), folder.resolve("copy.csv"));
        add(copy, "--restrapped").refused(3, "already");
        add(copy, "--straps-stay").succeeded();
        assertThat(Run.of("rig", "show", "--records", records(), "--json").json().at("/records")).hasSize(2);
    }

    @Test
    void oneInstallADayTellsNoRefitScatter() {
        Run added = add(COMPUTED.resolve("one-install-a-session.csv"), "--restrapped").succeeded();
        assertThat(added.out()).contains("Refit and day scatter together", "no refit scatter is taken");
        Run made = plan("--expected", "200hp", "--rig-name", "rollers 1", "--record", records(), "--json").succeeded();
        assertThat(made.json().at("/scatter/pull/origin").asText()).isEqualTo("rig-record");
        assertThat(made.json().at("/scatter/refit").isNull()).isTrue();
        assertThat(made.json().at("/scatter/sentences").toString()).contains("does not tell refit scatter");
    }

    @Test
    void saysWhatIsLacking() {
        assertThat(add(COMPUTED.resolve("one-session.csv"), "--restrapped").succeeded().out()).contains("day scatter is not known");
        assertThat(add(COMPUTED.resolve("one-pull-an-install.csv"), "--restrapped").succeeded().out())
                .contains("Pull and refit scatter together");
        assertThat(add(COMPUTED.resolve("refit-at-zero.csv"), "--restrapped").succeeded().out())
                .contains("Refit scatter: 0, the data show none", "no degrees of freedom");
    }

    @Test
    void leavesPartBOutAndSaysSo() {
        Path table = SmallTest.write(folder.resolve("mixed.csv"),
                "install,part,pull,value\nA1,A,1,190\nA1,A,2,191.5\nB1,B,1,204\nA2,A,1,192\nA2,A,2,190.2\n");
        assertThat(add(table, "--restrapped").succeeded().out()).contains("1 pull of part B was left out", "4 pulls in 2 installs");
        Path onlyB = SmallTest.write(folder.resolve("b.csv"), "install,part,pull,value\nB1,B,1,190\nB1,B,2,191\n");
        add(onlyB, "--restrapped").refused(3, "b.csv", "every pull is of part B");
    }

    @Test
    void takesTheInstallsOfATest() {
        JsonNode added = Run.of("rig", "add", "--test", "plans/electric-pump", "--records", records(), "--json").json();
        assertThat(added.at("/together/restrapped").asBoolean()).isTrue();
        assertThat(added.at("/together/chart/points")).hasSize(3);
        assertThat(added.at("/together/day").isNull()).isTrue();
    }

    @Test
    void badTablesNameThePlace() {
        refuses("install,value\nA1,190\nA1,fast\n", "line 3", "fast");
        refuses("install,value\nA1,190\nA1,190\n", "equal");
        refuses("install,value\nA1,190\nA1,190\nA2,191\nA2,191\n", "no pull scatter");
        refuses("install,value\nA1,190\n", "one value", "two pulls");
        refuses("value,session\n190,1\n", "install", "no such column");
        refuses("install,pull,value\nA1,1,190\nA1,1,191\n", "line 3", "already");
        refuses("session,install,value\nMonday,A1,190\nmonday,A2,191\n", "monday");
        refuses("install,value\nA1,1.41\nA1,1.42\n", "not near the level");
        refuses("install,value\nA1,141000\nA1,142000\n", "not near the level");
        refuses("install,value\nA1,190\nA1,-3\n", "line 3", "above 0");
        refuses("", "empty");
        assertThat(records()).doesNotExist();
    }

    @Test
    void contradictoryOptionsAreNamed() {
        Path table = COMPUTED.resolve("balanced-6x3x4.csv");
        add(table).refused(2, "--restrapped", "--straps-stay");
        add(table, "--restrapped", "--straps-stay").refused(2, "contradicts");
        add(table, "--restrapped", "--bandwidth", "3hp").refused(2, "--bandwidth");
        add(table, "--restrapped", "--test", "plans/electric-pump").refused(2, "not both");
        Run.of("rig", "add", "--records", records()).refused(2, "TABLE", "missing");
        Run.of("rig", "add", table, "--records", records(), "--restrapped", "--measure", MEASURE).refused(2, "--level");
        Run.of("rig", "add", table, "--records", records(), "--restrapped", "--measure", MEASURE, "--level", "190kg").refused(2, "--level");
        Run.of("rig", "add", "--test", "plans/electric-pump", "--records", records(), "--restrapped").refused(2, "--restrapped");
        Run.of("rig").refused(2, "action");
        Run.of("rig", "show", "--records", folder.resolve("nowhere")).refused(3, "no such folder");
    }

    @Test
    void aRecordIsReadStrictly() throws IOException {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped").succeeded();
        Path file = onlyFile();
        String text = Files.readString(file);
        for (String[] change : new String[][] {{"\"rigRecordVersion\" : 1", "\"rigRecordVersion\" : 2", "version 2"},
            {"\"rigRecordVersion\" : 1", "\"else\" : 1", "not a rig record"}, {"\"source\"", "\"sauce\"", "source: the field is missing"},
            {"\"source\"", "\"extra\" : 1, \"source\"", "extra: no such field"},
            {"\"mean\" : ", "\"mean\" : -", "mean"}, {"{", "", "not JSON"}}) {
            Files.writeString(file, text.replaceFirst(Pattern.quote(change[0]), change[1]));
            Run.of("rig", "show", "--records", records()).refused(3, ".rig.json", change[2]);
        }
    }

    @Test
    void nothingOutsideTheFolderIsReadOrWritten() throws IOException {
        Run.of("rig", "add", COMPUTED.resolve("balanced-6x3x4.csv"), "--records", records(), "--measure", MEASURE, "--level", "190hp",
                "--restrapped", "--name", "../../outside").succeeded();
        assertThat(onlyFile().getFileName().toString()).startsWith("outside-");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(records());
        }
        Path moved = Files.move(onlyFile(), folder.resolve("moved.json"));
        Files.createSymbolicLink(records().resolve("link.rig.json"), moved);
        Run.of("rig", "show", "--records", records()).refused(3, "link");
    }

    @Test
    void writesAPageWithItsChart() throws IOException {
        add(COMPUTED.resolve("balanced-6x3x4.csv"), "--restrapped").succeeded();
        Path page = folder.resolve("out/rig.html");
        Run.of("rig", "report", "--records", records(), "--out", page).succeeded();
        assertThat(Files.readString(page)).contains("<svg", "Install means over time", "+3 sigma", "How it is reckoned")
                .doesNotContain("${", "<script");
        Run.of("rig", "report", "--records", records(), "--out", onlyFile()).refused(2, "--out");
    }

    private Path records() {
        return folder.resolve("records");
    }

    private Path onlyFile() throws IOException {
        try (Stream<Path> files = Files.list(records())) {
            return files.toList().get(0);
        }
    }

    private Run add(Path table, Object... more) {
        List<Object> words = new ArrayList<>(List.of("rig", "add", table, "--records", records(), "--name", "rollers 1", "--measure", MEASURE,
                "--level", "190hp"));
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private static Object[] with(List<Object> words, Object... more) {
        return Stream.concat(words.stream(), Stream.of(more)).toArray();
    }

    private Run plan(Object... more) {
        List<Object> words = new ArrayList<>(List.of("new", folder.resolve("test"), "--part-a", "belt pump", "--part-b", "electric pump",
                "--measure", MEASURE));
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private void refuses(String text, String... words) {
        add(SmallTest.write(folder.resolve("bad.csv"), text), "--restrapped").refused(3, words);
    }

    private JsonNode json(Path mustExist, Run run, String file) {
        assertThat(mustExist).exists();
        run.succeeded();
        return new Run(List.of(), 0, SmallTest.read(folder.resolve(file)), "").json();
    }
}

package fairpull.app.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairpull.app.task.Progress;
import fairpull.app.usecase.shelf.RigOverTime.OfKey;
import fairpull.report.chart.Drawing;
import fairpull.ui.InventedTests;
import fairpull.ui.InventedTests.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rig over time says what the verb says; tests beside it are what the verb would make of them. */
class RigOverTimeTest {
    @TempDir
    private Path folder;

    private static Path file(Path records) throws IOException {
        try (Stream<Path> files = Files.list(records)) {
            return files.findFirst().orElseThrow();
        }
    }

    private List<ListedTest> tests(int number) throws IOException {
        for (int place = 0; place < number; place++) {
            InventedTests.make(folder.resolve("tests"), place, Kind.COMPLETE);
        }
        List<ListedTest> told = Collections.synchronizedList(new ArrayList<>());
        new ListTests().list(ListTests.find(folder.resolve("tests"), Progress.none()), told::add, Progress.none());
        return told;
    }

    @Test
    void aFolderAndAFileSayWhatTheVerbPrints() throws IOException {
        Path records = InventedTests.record(folder.resolve("rig"));
        OfKey ofFolder = RigOverTime.of(records, List.of()).keys().get(0);
        StringBuilder said = new StringBuilder(ofFolder.key() + "\n");
        ofFolder.said().forEach(sentence -> said.append("- ").append(sentence).append("\n"));
        assertThat(said).hasToString(InventedTests.run("rig", "show", "--records", records));
        assertThat(ofFolder.said()).contains(ofFolder.changed());
        assertThat(RigOverTime.of(file(records), List.of()).keys().get(0)).isEqualTo(ofFolder);
        assertThat(ofFolder.tests()).isEmpty();

        JsonNode shown = new ObjectMapper().readTree(InventedTests.run("rig", "show", "--records", records, "--json")).at("/records/0/pull");
        // 27 and more degrees of freedom: near the tabled 18.114 and 36.741 of 25 and 16.791 and 46.979 of 30
        double freedom = shown.at("/degreesOfFreedom").asDouble();
        assertThat(shown.at("/lowPercent").asDouble() / shown.at("/percent").asDouble()).isBetween(0.7, 0.85);
        assertThat(ofFolder.layers().get(0).get(3)).isEqualTo(fairpull.report.wording.Numbers.degreesOfFreedom(freedom));
    }

    @Test
    void testsBesideTheRecordAreWhatTheVerbMakesOfThem() throws IOException {
        Path records = InventedTests.record(folder.resolve("rig"));
        List<ListedTest> tests = tests(6);
        OfKey key = RigOverTime.of(records, tests).keys().get(0);
        assertThat(key.tests()).hasSize(3);
        assertThat(key.testCharts()).hasSize(3);
        assertThat(key.testCharts().get(0).description()).startsWith("6 tests");

        Path with = InventedTests.record(folder.resolve("with"));
        tests.stream().map(ListedTest::folder).sorted().forEach(test -> InventedTests.run("rig", "add", "--test", test, "--records", with));
        Path alone = folder.resolve("alone");
        tests.stream().map(ListedTest::folder).sorted().forEach(test -> InventedTests.run("rig", "add", "--test", test, "--records", alone));
        OfKey together = RigOverTime.of(with, List.of()).keys().get(0);
        assertThat(key.tests().get(2)).contains("6 tests taken in: " + together.changed());
        Drawing chart = key.testCharts().get(2);
        assertThat(chart).isEqualTo(together.chart().orElseThrow());
        JsonNode pull = new ObjectMapper().readTree(InventedTests.run("rig", "show", "--records", alone, "--json")).at("/records/0/pull");
        assertThat(key.tests().get(0)).contains(RigOverTime.of(alone, List.of()).keys().get(0).layers().get(0).get(1) + " with");
        // drawn with 1.15 of 192 hp; 60 degrees of freedom and more leave less than a quarter of that open
        assertThat(pull.at("/percent").asDouble()).isCloseTo(100 * 1.15 / 192, offset(0.15));
        assertThat(key.tests().get(0)).contains("not shown to differ in pull scatter");

        OfKey again = RigOverTime.of(with, tests).keys().get(0);
        assertThat(again.tests()).as("tests that are in the record already do not count twice").isEmpty();
    }

    @Test
    void testsOfAnotherRigStayAway() throws IOException {
        Path other = folder.resolve("other");
        InventedTests.run("rig", "add", Path.of("demo-data/baselines.csv"), "--records", other, "--name", "rollers 2", "--measure",
                "typed wheel power in hp", "--level", "192hp", "--restrapped");
        assertThat(RigOverTime.of(other, tests(1)).keys().get(0).tests()).isEmpty();
    }
}

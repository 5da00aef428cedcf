package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fair repeat of a publication, written as a test. */
class AuditPlanTest {
    private static final Path PUBLISHED = Path.of("demo-data/published");

    @TempDir
    private Path folder;

    @Test
    void theFairRepeatIsATestThatCheckTakes() {
        Path test = folder.resolve("repeat");
        JsonNode repeat = Run.of("audit", PUBLISHED.resolve("silent.json"), "--plan", test, "--json").json().get("repeat");
        Run checked = Run.of("check", test);

        assertThat(repeat.get("outcome").asText()).isEqualTo("found");
        assertThat(checked.status()).isZero();
        assertThat(checked.words()).contains("largest power of the pull").contains("Fair repeat");
        assertThat(Run.of("seal", test).status()).isZero();
    }

    @Test
    void aTestThatIsThereIsNotReplaced() {
        Path test = folder.resolve("repeat");
        Run.of("audit", PUBLISHED.resolve("sound.json"), "--plan", test).succeeded();
        String plan = SmallTest.read(test.resolve("plan.json"));

        Run.of("audit", PUBLISHED.resolve("silent.json"), "--plan", test, "--html", folder.resolve("a.html")).refused(3, "repeat");
        assertThat(SmallTest.read(test.resolve("plan.json"))).isEqualTo(plan);
        assertThat(folder.resolve("a.html")).doesNotExist();
    }

    @Test
    void whatNoRepeatCanSeeIsSaidAndNotWritten() {
        Path file = folder.resolve("small.json");
        SmallTest.write(file, SmallTest.read(PUBLISHED.resolve("silent.json")).replace("\"figure\": \"peak power\"}",
                "\"figure\": \"peak power\", \"gain\": \"0.5 hp\"}"));

        Run run = Run.of("audit", file, "--plan", folder.resolve("repeat"), "--html", folder.resolve("audit.html"));

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("No fair repeat within 3 days can see 0.5").contains("the audit says what would help");
        assertThat(run.out()).contains("What else would help").contains("With a record");
        assertThat(folder.resolve("repeat")).doesNotExist();
        assertThat(folder.resolve("audit.html")).content().contains("What else would help");
    }

    @Test
    void aPathThroughAFolderThatIsMissingLeavesNoneBehind() {
        Run.of("audit", PUBLISHED.resolve("sound.json"), "--plan", folder.resolve("missing/../repeat"), "--html",
                folder.resolve("absent/../pages/audit.html")).succeeded();

        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("repeat", "pages");
        assertThat(folder.resolve("repeat/plan.json")).exists();
        assertThat(folder.resolve("pages/audit.html")).exists();
    }

    @Test
    void whatIsNotDisclosedIsOrderedInFigures() {
        JsonNode missing = Run.of("audit", PUBLISHED.resolve("silent.json"), "--json").json().get("notDisclosed");

        assertThat(missing.get(0).get("item").asText()).as("it bars a claim from being shown").isEqualTo("return");
        assertThat(missing.get(2).get("item").asText()).isEqualTo("corrections");
        assertThat(missing.get(3).get("item").asText()).isEqualTo("rig");
        assertThat(missing.get(2).get("moves").asDouble()).isGreaterThan(missing.get(3).get("moves").asDouble());
        assertThat(missing.get(missing.size() - 1).get("moves").isNull()).isTrue();
        assertThat(Run.of("audit", PUBLISHED.resolve("sound.json"), "--json").json().get("notDisclosed")).isEmpty();
    }
}

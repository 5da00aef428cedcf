package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file with several pulls is kept once, its pulls are judged as if each had come alone, and what guards single files guards it. */
class SeveralPullsImportTest {
    private static final List<String> PULLS = List.of("A1-1", "A1-2", "B1-1", "B1-2", "A2-1", "A2-2");
    private static final double[] KILOWATTS = {100.1, 100.4, 102.2, 102.0, 100.3, 100.0};

    @TempDir
    private Path folder;
    private Path single;
    private Path shared;

    @BeforeEach
    void twoTestsOfOnePlanOneWithAFileAPull() {
        single = test("single");
        shared = test("shared");
        Run.of(SmallTest.words("import", single, SmallTest.exports(folder.resolve("exports"), String.join(" ", PULLS), KILOWATTS),
                "--corrected", "none")).succeeded();
    }

    @Test
    void headingsThatNamePullsSayWhereEachBelongs() throws IOException {
        Path file = SmallTest.write(folder.resolve("curves.csv"), curves());

        Run taken = Run.of("import", shared, file, "--corrected", "none").succeeded();

        assertThat(taken.out()).contains(PULLS);
        assertThat(names("pulls")).containsExactly("A1-1.csv");
        assertThat(Files.readAllBytes(shared.resolve("pulls/A1-1.csv"))).isEqualTo(Files.readAllBytes(file));
        assertJudgedAlike();
    }

    @Test
    void pullsOfAnInstallAreCountedInTheOrderOfTheFile() throws IOException {
        for (int install = 0; install < 3; install++) {
            String label = PULLS.get(2 * install).substring(0, 2);
            Path file = SmallTest.write(folder.resolve("session" + install + ".csv"), stacked(2 * install, 2 * install + 1));
            Run taken = Run.of("import", shared, file, "--install", label, "--corrected", "none").succeeded();
            assertThat(taken.out()).contains(label + "-1", label + "-2");
        }
        assertThat(names("pulls")).containsExactly("A1-1.csv", "A2-1.csv", "B1-1.csv");
        assertJudgedAlike();
    }

    @Test
    void aSharedFileIsTakenOnceAndItsChangeSaidOnce() throws IOException {
        Path file = SmallTest.write(folder.resolve("session.csv"), stacked(0, 1));
        Run.of("import", shared, file, "--install", "A1", "--corrected", "none").succeeded();

        Run again = Run.of("import", shared, file, "--install", "A2");
        assertThat(again.status()).isEqualTo(3);
        assertThat(again.err()).contains("the same bytes as pull A1-1");
        Path kept = shared.resolve("pulls/A1-1.csv");
        Files.writeString(kept, SmallTest.read(kept).replace("100.400", "101.400"));
        assertThat(Run.of("check", shared).succeeded().out()).containsOnlyOnce("A1-1.csv");
    }

    @Test
    void whatIsNotSaidIsAsked() {
        Path file = SmallTest.write(folder.resolve("A1-1.csv"), stacked(0, 1));

        Run asked = Run.of("import", shared, file);
        assertThat(asked.status()).isEqualTo(3);
        assertThat(asked.err()).contains("the file holds 2 pulls (the header stands again at line 24) and does not say which", "--install B1",
                "--one-pull");
        Run named = Run.of("import", shared, SmallTest.write(folder.resolve("curves.csv"), curves()), "--install", "A1");
        assertThat(named.err()).contains("the file says itself which pulls it holds", "leave out --install");
        assertThat(Run.of("import", shared, file, "--install", "A1", "--at", "2026-05-09T09:42:00+02:00").status()).isEqualTo(2);
        assertThat(Files.exists(shared.resolve("pulls"))).isFalse();
        Run.of("import", shared, file, "--one-pull").succeeded();
    }

    @Test
    void theLogOfAFileAPullIsWrittenAsBefore() throws IOException {
        assertThat(Files.readString(single.resolve("log.jsonl"))).doesNotContain("numberInFile");
        Run.of("import", shared, SmallTest.write(folder.resolve("session.csv"), stacked(0, 1)), "--install", "A1").succeeded();
        assertThat(Files.readString(shared.resolve("log.jsonl"))).contains("\"numberInFile\":1", "\"numberInFile\":2");
    }

    @Test
    void thePreviewHonoursWhatWasChosen() {
        Path file = SmallTest.write(folder.resolve("run.csv"), "rpm,Engine power (kW),P wheel\n2000,50.5,60\n3000,60.5,70\n");

        JsonNode guessed = Run.of("import", shared, file, "--preview", "--json").succeeded().json().get("files").get(0);
        assertThat(guessed.get("columns").get(1).get("quantity").asText()).isEqualTo("power");
        assertThat(guessed.get("pulls").asInt()).isEqualTo(1);
        JsonNode chosen = Run.of("import", shared, file, "--preview", "--json", "--column", "power=P wheel:hp").succeeded().json()
                .get("files").get(0);
        assertThat(chosen.get("columns").get(1).get("quantity").isNull()).isTrue();
        assertThat(chosen.get("columns").get(2).get("quantity").asText()).isEqualTo("power");
        assertThat(chosen.get("columns").get(2).get("unit").asText()).isEqualTo("hp");
        assertThat(chosen.get("columns").get(2).get("reason").asText()).isEqualTo("chosen by hand");
        assertThat(Run.of("import", shared, file, "--preview", "--column", "power=Boost").status()).isEqualTo(3);
    }

    private void assertJudgedAlike() {
        JsonNode alone = Run.of("judge", single, "--json").succeeded().json();
        JsonNode together = Run.of("judge", shared, "--json").succeeded().json();
        for (String figure : List.of("estimate", "standardError", "interval", "scatter", "installMeans")) {
            assertThat(together.get(figure)).as(figure).isNotNull().isEqualTo(alone.get(figure));
        }
        assertThat(Run.of("check", shared).succeeded().out()).doesNotContain("by hand", "not in the log", "Not the files");
    }

    private Path test(String name) {
        Path test = SmallTest.make(folder.resolve(name), "ABA", "--worthwhile", "2kW", "--refit-scatter", "0.5kW", "--refit-df", "8");
        Run.of("seal", test).succeeded();
        return test;
    }

    private List<String> names(String of) throws IOException {
        try (var files = Files.list(shared.resolve(of))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String curves() {
        StringBuilder text = new StringBuilder("engine speed (rpm)");
        PULLS.forEach(pull -> text.append(',').append(pull).append(" power (kW)"));
        for (int rpm = 2000; rpm <= 7000; rpm += 250) {
            text.append('\n').append(rpm);
            for (double kilowatts : KILOWATTS) {
                text.append(',').append(String.format(Locale.ROOT, "%.3f", kilowatts));
            }
        }
        return text.append('\n').toString();
    }

    private String stacked(int... pulls) {
        StringBuilder text = new StringBuilder();
        for (int pull : pulls) {
            text.append(text.isEmpty() ? "" : "\n").append(SmallTest.read(folder.resolve("exports/" + PULLS.get(pull) + ".csv")));
        }
        return text.toString();
    }
}

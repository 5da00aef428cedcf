package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A kill takes nothing away: what was typed is offered at the next start. */
@Tag("window")
class KilledWindowTest {
    private static final String TITLE = "Typed before the kill";
    private static final int LONGEST_S = 60;

    @TempDir
    private Path home;

    @Test
    void whatWasTypedBeforeAKillIsOfferedAtTheNextStart() throws IOException, InterruptedException {
        Process program = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfairpull.home=" + home, "-cp", System.getProperty("java.class.path"), EditedThenIdle.class.getName(), TITLE))
                .redirectErrorStream(true).redirectOutput(home.resolve("said.txt").toFile()).start();
        try {
            for (int waited = 0; waited < LONGEST_S * 10 && !isKept() && program.isAlive(); waited++) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
            assertThat(isKept()).as(Files.readString(home.resolve("said.txt"))).isTrue();
            assertThat(program.isAlive()).isTrue();
        } finally {
            program.destroyForcibly().waitFor();
        }
        try (OnScreen screen = OnScreen.started(home)) {
            Document offered = screen.window(TITLE).document();
            assertThat(offered.plan().title()).isEqualTo(TITLE);
            assertThat(offered.isChanged()).isTrue();
            JTextArea banner = screen.find("banner.words", JTextArea.class);
            assertThat(banner.getText()).contains("not saved");
            assertThat(recovery().filter(file -> file.getName().startsWith(program.pid() + "-"))).isEmpty();
            assertThat(recovery()).as("they are still safe").isNotEmpty();
        }
    }

    private Stream<File> recovery() {
        File[] files = home.resolve("recovery").toFile().listFiles((folder, name) -> name.endsWith(".json"));
        return files == null ? Stream.empty() : Stream.of(files);
    }

    private boolean isKept() {
        return recovery().anyMatch(file -> {
            try {
                return Files.readString(file.toPath()).contains(TITLE);
            } catch (IOException beingReplaced) {
                return false;
            }
        });
    }
}

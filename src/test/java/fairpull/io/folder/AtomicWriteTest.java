package fairpull.io.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicWriteTest {
    @TempDir
    private Path home;

    @Test
    void whatCannotBeWrittenIsTheFileThatWasMeant() throws IOException {
        Path folder = Files.createDirectories(home.resolve("report.html/inner"));
        assertThatThrownBy(() -> AtomicWrite.text(home.resolve("report.html"), "x")).isInstanceOfSatisfying(FileSystemException.class, said -> {
            assertThat(said.getFile()).isEqualTo(home.resolve("report.html").toString());
            assertThat(said.getMessage()).doesNotContain(".part");
        });
        assertThat(folder).exists();
        Path file = Files.writeString(home.resolve("file"), "old");
        assertThatThrownBy(() -> AtomicWrite.text(file.resolve("report.html"), "x")).isInstanceOf(FileSystemException.class)
                .hasMessageContaining("report.html").hasMessageNotContaining(".part");
        try (Stream<Path> left = Files.list(home)) {
            assertThat(left).as("nothing is left behind").containsExactlyInAnyOrder(home.resolve("report.html"), file);
        }
    }

    @Test
    void aFolderThatIsGoneIsNamed() {
        assertThatThrownBy(() -> AtomicWrite.bytes(home.resolve("gone/sheet.pdf"), new byte[1]))
                .isInstanceOfSatisfying(NoSuchFileException.class, said -> assertThat(said.getFile()).isEqualTo(home.resolve("gone").toString()));
    }

    @Test
    void whatIsWrittenIsThereAlone() throws IOException {
        AtomicWrite.text(home.resolve("plan.json"), "{}");
        AtomicWrite.text(home.resolve("plan.json"), "[]");
        assertThat(home.resolve("plan.json")).hasContent("[]");
        try (Stream<Path> left = Files.list(home)) {
            assertThat(left).hasSize(1);
        }
    }
}

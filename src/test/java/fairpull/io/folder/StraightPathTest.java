package fairpull.io.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Paths through folders that are missing, and through links. */
class StraightPathTest {
    @TempDir
    private Path folder;

    @Test
    void aFolderThatIsMissingIsLeftOut() throws IOException {
        assertThat(StraightPath.of(folder.resolve("missing/../test"))).isEqualTo(folder.resolve("test"));
        assertThat(StraightPath.of(folder.resolve("missing/deeper/../../test"))).isEqualTo(folder.resolve("test"));
    }

    @Test
    void whatIsStraightStaysAsItWasTyped() throws IOException {
        assertThat(StraightPath.of(Path.of("tests/inlet"))).isEqualTo(Path.of("tests/inlet"));
        assertThat(StraightPath.of(Path.of("/../tests"))).isEqualTo(Path.of("/tests").toAbsolutePath());
    }

    /** As the system has it: behind a link, up is up from where it leads. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkIsFollowed() throws IOException {
        Path far = Files.createDirectories(folder.resolve("far/deep"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), far);

        assertThat(StraightPath.of(link.resolve("../test"))).isEqualTo(folder.resolve("far").toRealPath().resolve("test"));
    }
}

package fairpull.app.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderWatchTest {
    @TempDir
    private Path folder;

    @Test
    void whatWasThereBeforeIsNotNewUntilItIsWrittenAgain() throws IOException {
        Path old = Files.writeString(folder.resolve("old.csv"), "1");
        FolderWatch watch = FolderWatch.of(folder);
        assertThat(watch.already()).isEqualTo(1);
        assertThat(watch.poll()).isEmpty();
        assertThat(watch.poll()).isEmpty();
        Files.writeString(old, "1,2");
        assertThat(watch.poll()).isEmpty();
        assertThat(watch.poll()).containsExactly(old);
        assertThat(watch.poll()).isEmpty();
    }

    @Test
    void afterAnInterruptionWhatCameMeanwhileIsNewUnlessItIsKnown() throws IOException {
        Instant since = Instant.now().plusSeconds(60);
        Path old = Files.writeString(folder.resolve("old.csv"), "1");
        Path known = Files.writeString(folder.resolve("known.csv"), "2");
        Path missed = Files.writeString(folder.resolve("missed.csv"), "3");
        for (Path later : List.of(known, missed)) {
            Files.setLastModifiedTime(later, FileTime.from(since.plusSeconds(5)));
        }
        FolderWatch watch = FolderWatch.resumed(folder, since, known::equals);
        assertThat(watch.already()).isEqualTo(1);
        assertThat(watch.poll()).as("it may still grow").isEmpty();
        assertThat(watch.poll()).containsExactly(missed);
        assertThat(old).exists();
    }

    @Test
    void aFileThatStillGrowsIsWaitedFor() throws IOException {
        FolderWatch watch = FolderWatch.of(folder);
        Path file = folder.resolve("pull.csv");
        for (String part : new String[] {"1", "1,2", "1,2,3"}) {
            Files.writeString(file, part);
            assertThat(watch.poll()).as(part).isEmpty();
        }
        assertThat(watch.poll()).containsExactly(file);
    }

    @Test
    void anEmptyFileAndOneUnderAnUnfinishedNameAreWaitedForUntilTheyAreRenamed() throws IOException {
        FolderWatch watch = FolderWatch.of(folder);
        Files.createFile(folder.resolve("empty.csv"));
        Path part = Files.writeString(folder.resolve("pull.csv.part"), "1,2");
        watch.poll();
        assertThat(watch.poll()).isEmpty();
        Path whole = Files.move(part, folder.resolve("pull.csv"));
        assertThat(watch.poll()).isEmpty();
        assertThat(watch.poll()).containsExactly(whole);
    }

    @Test
    void aFolderThatGoesAndComesBackIsReadAgain() throws IOException {
        Path share = Files.createDirectories(folder.resolve("share"));
        FolderWatch watch = FolderWatch.of(share);
        Files.delete(share);
        org.assertj.core.api.Assertions.assertThatThrownBy(watch::poll).isInstanceOf(IOException.class);
        Files.createDirectories(share);
        Path file = Files.writeString(share.resolve("pull.csv"), "1");
        watch.poll();
        assertThat(watch.poll()).containsExactly(file);
    }
}

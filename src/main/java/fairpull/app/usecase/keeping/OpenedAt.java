package fairpull.app.usecase.keeping;

import fairpull.app.document.Document;
import fairpull.domain.InputException;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.running.DayProgress;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where the work on a test stands, and so what is to be shown of it first. */
public enum OpenedAt {
    /** Its plan is worked on. */
    PLANNING,
    /** Its day is under way. */
    RUNNING,
    /** Its day is over. */
    OVER;

    /** {@return where the work on the test in a folder stands} */
    public static OpenedAt of(Path folder) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        boolean begun = content.log().standing().stream().anyMatch(record -> record.entry() instanceof LogEntry.PullTaken
                || record.entry() instanceof LogEntry.PullRun || record.entry() instanceof LogEntry.Swap);
        return !content.isSealed() || !begun ? PLANNING
                : DayProgress.of(content.plan(), content.log()).isOver() ? OVER : RUNNING;
    }

    /** {@return of some folders those whose day is under way, opened; what cannot be read is passed over} */
    public static List<Document> running(List<Path> folders) {
        List<Document> running = new ArrayList<>();
        for (Path folder : folders) {
            try {
                if (Files.isDirectory(folder) && of(folder) == RUNNING) {
                    running.add(KeepTest.open(folder));
                }
            } catch (IOException | InputException unreadable) {
                continue;
            }
        }
        return running;
    }
}

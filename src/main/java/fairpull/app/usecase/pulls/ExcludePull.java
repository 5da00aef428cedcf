package fairpull.app.usecase.pulls;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;

/** Leaves a pull out with a reason, or takes that back. The pull stays on file, and every finding shows it. */
public final class ExcludePull {
    private ExcludePull() {
    }

    /** Leaves a pull out. */
    public static void exclude(Path folder, PullId pull, String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        if (!content.log().pulls().containsKey(pull) || pull.warmUp()) {
            throw new InputException(Place.of(folder.toString()), "no counted pull " + pull + " has come in",
                    "name a pull that was imported");
        }
        if (content.log().excluded().containsKey(pull)) {
            throw new InputException(Place.of(folder.toString()), "pull " + pull + " is left out already",
                    new Remedy("take that back with --readmit", "take it back in beneath the table of pulls"));
        }
        test.append(now, List.of(new LogEntry.Excluded(pull, because)));
    }

    /** Takes an exclusion back. */
    public static void readmit(Path folder, PullId pull, String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        if (!test.read().log().excluded().containsKey(pull)) {
            throw new InputException(Place.of(folder.toString()), "pull " + pull + " is not left out", "name a pull that is");
        }
        test.append(now, List.of(new LogEntry.Readmitted(pull, because)));
    }
}

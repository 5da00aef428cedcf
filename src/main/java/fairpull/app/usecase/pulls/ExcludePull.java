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
import java.util.Set;

/** Leaves pulls out with a reason, or takes that back. They stay on file, and every finding shows them. */
public final class ExcludePull {
    private ExcludePull() {
    }

    /** Leaves pulls out, all or none. */
    public static void exclude(Path folder, List<PullId> pulls, String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        TestFolder.Content content = test.read();
        pulls.forEach(pull -> check(folder, content, pull));
        test.append(now, pulls.stream().map(pull -> (LogEntry) new LogEntry.Excluded(pull, because)).toList());
    }

    private static void check(Path folder, TestFolder.Content content, PullId pull) {
        if (!content.log().pulls().containsKey(pull) || pull.warmUp()) {
            throw new InputException(Place.of(folder.toString()), "no counted pull " + pull + " has come in",
                    "name a pull that was imported");
        }
        if (content.log().excluded().containsKey(pull)) {
            throw new InputException(Place.of(folder.toString()), "pull " + pull + " is left out already",
                    new Remedy("take that back with --readmit", "take it back in beneath the table of pulls"));
        }
    }

    /** Takes exclusions back, all or none. */
    public static void readmit(Path folder, List<PullId> pulls, String because, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Set<PullId> out = test.read().log().excluded().keySet();
        pulls.stream().filter(pull -> !out.contains(pull)).findFirst().ifPresent(pull -> {
            throw new InputException(Place.of(folder.toString()), "pull " + pull + " is not left out", "name a pull that is");
        });
        test.append(now, pulls.stream().map(pull -> (LogEntry) new LogEntry.Readmitted(pull, because)).toList());
    }
}

package fairpull.ui.page.pulls;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.ui.theme.Words;
import java.io.UncheckedIOException;

/** What went wrong beside the window's thread, in words. */
final class Faults {
    private Faults() {
    }

    static String words(RuntimeException fault) {
        if (fault instanceof InputException unusable) {
            return unusable.oneLine();
        }
        if (fault instanceof UsageException misuse) {
            return misuse.problem();
        }
        return fault instanceof UncheckedIOException disk ? Words.of("disk", String.valueOf(disk.getCause().getMessage()))
                : Words.of("fault", fault);
    }
}

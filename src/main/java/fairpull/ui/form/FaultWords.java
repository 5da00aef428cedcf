package fairpull.ui.form;

import fairpull.app.usecase.UsageException;
import fairpull.domain.Remedy;
import fairpull.domain.InputException;
import fairpull.domain.Remedy.Surface;
import fairpull.ui.theme.Words;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What went wrong, in one sentence for people. */
public final class FaultWords {
    private FaultWords() {
    }

    /** {@return what to say of a fault: its own words where a user can mend it, what to look at where the disk failed} */
    public static String of(Throwable fault) {
        if (fault instanceof InputException unusable) {
            return unusable.oneLine(Surface.WINDOW);
        }
        if (fault instanceof UsageException misuse) {
            return Remedy.withoutCommands(misuse.problem());
        }
        if (fault instanceof UncheckedIOException disk) {
            return of(disk.getCause());
        }
        if (fault instanceof IOException disk) {
            return onDisk(disk);
        }
        return fault instanceof OutOfMemoryError ? Words.of("fault.memory") : Words.of("fault", fault);
    }

    /** {@return the same as sentences for lines of their own: what went wrong, then what to do, where that is known apart} */
    public static List<String> sentences(Throwable fault) {
        return sentences(fault, of(fault));
    }

    /** {@return the same of a file that is named already} */
    public static List<String> sentences(Throwable fault, Path named) {
        String whole = of(fault);
        return sentences(fault, Stream.of(named + ": ", named + ", ", named.getFileName() + ": ", named.getFileName() + ", ")
                .filter(whole::startsWith).findFirst().map(name -> whole.substring(name.length())).orElse(whole));
    }

    private static List<String> sentences(Throwable fault, String whole) {
        String remedy = fault instanceof InputException unusable ? unusable.remedy().on(Surface.WINDOW) : "";
        List<String> parts = remedy.isEmpty() || !whole.endsWith("; " + remedy) ? List.of(whole)
                : List.of(whole.substring(0, whole.length() - remedy.length() - 2), remedy);
        return parts.stream().map(Words::sentence).map(part -> part.matches("(?s).*[.?!]") ? part : part + ".").toList();
    }

    private static String onDisk(IOException fault) {
        String message = String.valueOf(fault.getMessage());
        if (fault instanceof NoSuchFileException || fault instanceof FileNotFoundException) {
            return Words.of("disk.gone", message);
        }
        return Words.of(fault instanceof AccessDeniedException ? "disk.denied" : "disk", message);
    }
}

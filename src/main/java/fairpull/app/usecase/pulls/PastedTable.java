package fairpull.app.usecase.pulls;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.io.folder.AtomicWrite;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A table that was pasted out of a spreadsheet or typed by hand. One with a column {@code pull} is a notebook, whose lines are noted
 * beside the pulls that they name; any other is the export of a pull, and is kept as a file until it is imported.
 */
public final class PastedTable {
    private static final Pattern NOTEBOOK = Pattern.compile("(?is)\\A\\s*(?:[^\\n]*[,;\\t]\\s*)?\"?pull\"?\\s*(?:[,;\\t\\n].*)?");
    private static final String ENDING = ".txt";

    private PastedTable() {
    }

    /** What was pasted: the export of a pull, or what was noted beside the pulls that are named. */
    public record Read(Optional<Path> export, List<String> noted) {
        public Read {
            noted = List.copyOf(noted);
        }
    }

    /**
     * Reads a table for a test: a notebook is written into its log, anything else becomes a file.
     *
     * @throws InputException if it is a notebook that cannot be used; nothing of it is written then
     */
    public static Read read(Path folder, String text, OffsetDateTime now) throws IOException {
        if (text.isBlank()) {
            throw new UsageException("table", "there is nothing in it yet");
        }
        Path file = Files.createTempDirectory("fairpull").resolve("pasted-"
                + String.format(Locale.ROOT, "%tH%<tM%<tS", now) + ENDING);
        AtomicWrite.text(file, text.endsWith("\n") ? text : text + "\n");
        if (!NOTEBOOK.matcher(text).matches()) {
            return new Read(Optional.of(file), List.of());
        }
        try {
            return new Read(Optional.empty(), NoteTable.note(folder, file, now));
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(file.getParent());
        }
    }
}

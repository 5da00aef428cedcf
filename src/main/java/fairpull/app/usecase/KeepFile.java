package fairpull.app.usecase;

import fairpull.io.folder.AtomicWrite;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** Writes what was made in the window, such as the picture of a chart, whole or not at all. */
public final class KeepFile {
    private KeepFile() {
    }

    /** {@return the file that is meant by what was typed: its name gets the ending where it has another or none} */
    public static Path named(Path typed, String ending) {
        String name = String.valueOf(typed.getFileName());
        return name.toLowerCase(Locale.ROOT).endsWith(ending) ? typed : typed.resolveSibling(name + ending);
    }

    /** Writes a file, in place of another of that name. */
    public static void bytes(Path file, byte[] bytes) throws IOException {
        AtomicWrite.bytes(file, bytes);
    }
}

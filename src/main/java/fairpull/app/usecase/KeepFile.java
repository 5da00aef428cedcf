package fairpull.app.usecase;

import fairpull.io.folder.AtomicWrite;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** Writes what was made in the window, such as the picture of a chart, whole or not at all. */
public final class KeepFile {
    private KeepFile() {
    }

    /** Writes a file; its name gets the ending where it has another or none. Returns where it was written. */
    public static Path bytes(Path target, String ending, byte[] bytes) throws IOException {
        String name = String.valueOf(target.getFileName());
        Path file = name.toLowerCase(Locale.ROOT).endsWith(ending) ? target : target.resolveSibling(name + ending);
        AtomicWrite.bytes(file, bytes);
        return file;
    }
}

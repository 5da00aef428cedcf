package fairpull.io.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders that are made for files in them, and gone again where those cannot be written. */
public final class NewFolders {
    private NewFolders() {
    }

    /** Makes a folder and those above it where they are missing, then does what it is for; where that fails, they are removed again. */
    public static void with(Path folder, AtomicWrite.Work work) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path above = folder.toAbsolutePath(); above != null && !Files.exists(above); above = above.getParent()) {
            missing.addLast(above);
        }
        try {
            Files.createDirectories(folder);
            work.run();
        } catch (IOException | RuntimeException failed) {
            for (Path made : missing) {
                removeIfEmpty(made);
            }
            throw failed;
        }
    }

    private static void removeIfEmpty(Path folder) {
        try {
            Files.deleteIfExists(folder);
        } catch (IOException somethingCameIn) {
            // it is somebody else's by now; why the work failed is what counts
        }
    }
}

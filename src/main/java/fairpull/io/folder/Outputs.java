package fairpull.io.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files that are made from a test for somebody else: all of them are written or none, and the folders that they need are made. */
public final class Outputs {
    private Outputs() {
    }

    /** Writes a text in UTF-8. */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes one file. */
    public static void write(Path file, byte[] bytes) throws IOException {
        write(Map.of(file, bytes));
    }

    /** Writes several files, given by their paths. */
    public static void write(Map<Path, byte[]> files) throws IOException {
        Map<Path, byte[]> straight = new LinkedHashMap<>();
        for (Map.Entry<Path, byte[]> file : files.entrySet()) {
            straight.put(StraightPath.of(file.getKey()), file.getValue());
        }
        inFolders(straight.keySet().stream().map(file -> file.toAbsolutePath().getParent()).distinct().toList(),
                () -> AtomicWrite.all(straight));
    }

    private static void inFolders(List<Path> folders, AtomicWrite.Work work) throws IOException {
        if (folders.isEmpty()) {
            work.run();
        } else {
            NewFolders.with(folders.get(0), () -> inFolders(folders.subList(1, folders.size()), work));
        }
    }
}

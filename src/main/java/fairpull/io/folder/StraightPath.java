package fairpull.io.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A path through no folder that is missing: making the folders of {@code missing/../there} would leave {@code missing} behind. */
public final class StraightPath {
    private StraightPath() {
    }

    /** {@return the same place; a {@code ..} behind a folder that is there follows its links, behind one that is missing it undoes it} */
    public static Path of(Path path) throws IOException {
        Path straight = path.getRoot() == null ? Path.of("") : path.getRoot();
        for (Path name : path) {
            straight = !name.toString().equals("..") ? straight.resolve(name)
                    : Files.exists(straight.toAbsolutePath()) ? parent(straight.toAbsolutePath().toRealPath())
                    : straight.toAbsolutePath().getParent();
        }
        return straight;
    }

    /** Above the root there is the root. */
    private static Path parent(Path folder) {
        return folder.getParent() == null ? folder : folder.getParent();
    }
}

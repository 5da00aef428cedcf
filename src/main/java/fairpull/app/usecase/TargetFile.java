package fairpull.app.usecase;

import fairpull.io.folder.TestFolder;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where something may be written that is made from a test. */
final class TargetFile {
    private TargetFile() {
    }

    /** Refuses a folder, and a file that the test keeps for itself. */
    static void check(Path folder, Path target, String example) {
        Path wanted = target.toAbsolutePath().normalize();
        Path test = folder.toAbsolutePath().normalize();
        if (Files.isDirectory(wanted)) {
            throw new UsageException("--out", target + " is a folder; name a file in it, such as " + target.resolve(example));
        }
        if (wanted.startsWith(test.resolve("pulls")) || wanted.getParent().equals(test) && TestFolder.isOwnName(wanted)) {
            throw new UsageException("--out", target + " belongs to the test itself; write to another file");
        }
    }
}

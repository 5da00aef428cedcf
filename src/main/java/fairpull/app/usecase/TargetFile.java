package fairpull.app.usecase;

import fairpull.io.folder.TestFolder;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where something may be written that is made from a test. */
public final class TargetFile {
    private TargetFile() {
    }

    /** Refuses a folder, and a file that the test keeps for itself. */
    public static void check(Path folder, Path target, String example) {
        check(folder, "--out", target, example);
    }

    /** The same for a file that was named by another option. */
    public static void check(Path folder, String option, Path target, String example) {
        Path wanted = target.toAbsolutePath().normalize();
        Path test = folder.toAbsolutePath().normalize();
        if (Files.isDirectory(wanted)) {
            throw new UsageException(option, target + " is a folder; name a file in it, such as " + target.resolve(example));
        }
        if (wanted.startsWith(test.resolve("pulls")) || wanted.getParent().equals(test) && TestFolder.isOwnName(wanted)) {
            throw new UsageException(option, target + " belongs to the test itself; write to another file");
        }
    }

    /** Refuses a file, and a folder that the test keeps for itself. */
    public static void checkFolder(Path folder, String option, Path target) {
        Path wanted = target.toAbsolutePath().normalize();
        Path test = folder.toAbsolutePath().normalize();
        if (Files.isRegularFile(wanted)) {
            throw new UsageException(option, target + " is a file; name a folder, or a file that ends in .csv for the table of "
                    + "pulls alone");
        }
        if (wanted.equals(test) || wanted.startsWith(test.resolve("pulls"))) {
            throw new UsageException(option, target + " belongs to the test itself; write to another folder");
        }
    }
}

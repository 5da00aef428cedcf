package fairpull.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of a test, in which things may be written. */
public final class CopiedTest {
    private CopiedTest() {
    }

    /** {@return the copy} */
    public static Path of(Path test, Path into) throws IOException {
        try (Stream<Path> files = Files.walk(test)) {
            for (Path file : files.toList()) {
                Path target = into.resolve(test.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return into;
    }
}

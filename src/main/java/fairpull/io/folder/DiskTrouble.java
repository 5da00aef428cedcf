package fairpull.io.folder;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Trouble of the disk, told of the file that was meant. */
final class DiskTrouble {
    private DiskTrouble() {
    }

    /** {@return the trouble of writing a file: told of it, or of its folder where that is gone, never of a temporary file or of none} */
    static IOException of(Path meant, Path temporary, IOException trouble) {
        if (!(trouble instanceof FileSystemException named)) {
            return new FileSystemException(meant.toString(), null, trouble.getMessage());
        }
        if (named.getFile() != null && !named.getFile().equals(temporary.toString())) {
            return trouble;
        }
        return trouble instanceof AccessDeniedException ? new AccessDeniedException(meant.toString(), null, named.getReason())
                : trouble instanceof NoSuchFileException ? new NoSuchFileException(String.valueOf(meant.toAbsolutePath().getParent()))
                : new FileSystemException(meant.toString(), null, named.getReason());
    }
}

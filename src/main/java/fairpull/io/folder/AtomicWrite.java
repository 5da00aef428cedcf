package fairpull.io.folder;

import fairpull.domain.InputException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file whole or not at all: a temporary file beside it, flushed to the disk, then moved into place. */
public final class AtomicWrite {
    private AtomicWrite() {
    }

    /** Writes a text in UTF-8. */
    public static void text(Path target, String text) throws IOException {
        write(target, temporary -> Files.writeString(temporary, text, StandardCharsets.UTF_8));
    }

    /** Writes bytes. */
    public static void bytes(Path target, byte[] bytes) throws IOException {
        write(target, temporary -> Files.write(temporary, bytes));
    }

    /**
     * Copies a file byte for byte.
     *
     * @throws InputException if it has another SHA-256 by now
     */
    static void copy(Path source, Path target, String sha256) throws IOException {
        write(target, temporary -> {
            if (!Sha256.copied(source, temporary).equals(sha256)) {
                throw new InputException(InputException.Place.of(source.toString()), "the file has changed since it was read",
                        "wait until it is complete, and give it again");
            }
        });
    }

    private interface Fill {
        void into(Path temporary) throws IOException;
    }

    private static void write(Path target, Fill fill) throws IOException {
        Path temporary = target.toAbsolutePath().resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            fill(temporary, target, fill);
        } catch (FileSystemException trouble) {
            throw temporary.toString().equals(trouble.getFile()) ? about(target, trouble) : trouble;
        } catch (IOException trouble) {
            throw new FileSystemException(target.toString(), null, trouble.getMessage());
        }
    }

    private static void fill(Path temporary, Path target, Fill fill) throws IOException {
        try {
            fill.into(temporary);
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Nobody knows the temporary file: what cannot be written is the file that was meant, or its folder is gone. */
    private static FileSystemException about(Path target, FileSystemException trouble) {
        Path folder = target.toAbsolutePath().getParent();
        if (trouble instanceof NoSuchFileException) {
            return new NoSuchFileException(String.valueOf(folder));
        }
        return trouble instanceof AccessDeniedException ? new AccessDeniedException(target.toString())
                : new FileSystemException(target.toString(), null, trouble.getReason());
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plainMove) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

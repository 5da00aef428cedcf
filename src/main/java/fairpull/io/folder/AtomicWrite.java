package fairpull.io.folder;

import fairpull.domain.InputException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** Writes a file whole or not at all: a temporary file beside it, flushed to the disk, then moved into place. */
public final class AtomicWrite {
    private AtomicWrite() {
    }

    /** Something that writes. */
    public interface Work {
        /** Does it. */
        void run() throws IOException;
    }

    /** Writes a text in UTF-8. */
    public static void text(Path target, String text) throws IOException {
        bytes(target, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes. */
    public static void bytes(Path target, byte[] bytes) throws IOException {
        write(target, temporary -> Files.write(temporary, bytes));
    }

    /** Writes several files; none is moved into place before all of them are on the disk. */
    static void all(Map<Path, byte[]> files) throws IOException {
        Map<Path, Path> filled = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> file : files.entrySet()) {
                Path temporary = beside(file.getKey());
                filled.put(file.getKey(), temporary);
                fill(file.getKey(), temporary, part -> Files.write(part, file.getValue()));
            }
            for (Map.Entry<Path, Path> file : filled.entrySet()) {
                move(file.getValue(), file.getKey());
            }
        } finally {
            filled.values().forEach(AtomicWrite::drop);
        }
    }

    /** Writes a text, then does what belongs to it; where that fails, the file is again what it was before, on a full disk too. */
    static void text(Path target, String text, Work then) throws IOException {
        Path before = beside(target);
        try {
            if (Files.exists(target)) {
                fill(target, before, copy -> Files.copy(target, copy));
            }
            text(target, text);
            try {
                then.run();
            } catch (IOException | RuntimeException failed) {
                if (Files.exists(before)) {
                    move(before, target);
                } else {
                    Files.delete(target);
                }
                throw failed;
            }
        } finally {
            drop(before);
        }
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
        Path temporary = beside(target);
        try {
            fill(target, temporary, fill);
            move(temporary, target);
        } finally {
            drop(temporary);
        }
    }

    /** What is left of a temporary file; trouble with it must not hide why it was left. */
    private static void drop(Path temporary) {
        temporary.toFile().delete();
    }

    private static Path beside(Path target) {
        return target.toAbsolutePath().resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
    }

    private static void fill(Path target, Path temporary, Fill fill) throws IOException {
        try {
            fill.into(temporary);
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        } catch (IOException trouble) {
            throw DiskTrouble.of(target, temporary, trouble);
        }
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            replace(temporary, target);
        } catch (IOException trouble) {
            throw DiskTrouble.of(target, temporary, trouble);
        }
    }

    private static void replace(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plainMove) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

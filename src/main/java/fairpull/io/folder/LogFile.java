package fairpull.io.folder;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.io.json.LogJson;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The append-only log. Every line carries the SHA-256 of the line before, so that a line changed, added or taken out by hand
 * shows. A last line without its line feed is a write that was cut short: it is passed over and overwritten by the next.
 */
final class LogFile {
    /** A log longer than this was not written by this program. */
    private static final long MOST_BYTES = 64L << 20;

    private final Path file;

    LogFile(Path file) {
        this.file = file;
    }

    /**
     * A log as read.
     *
     * @param records its entries
     * @param brokenAt number of the first entry that does not follow from the one before; empty where the chain holds
     * @param cutShort whether an unfinished line stands behind the last entry
     * @param head the hash of the last line, which stands for the whole log; of nothing for an empty one
     */
    record Content(List<LogRecord> records, Optional<Integer> brokenAt, boolean cutShort, String head) {
    }

    /** {@return what the log holds; nothing where there is no log yet} */
    Content read() throws IOException {
        if (!Files.exists(file)) {
            return new Content(List.of(), Optional.empty(), false, Sha256.of(""));
        }
        byte[] bytes = Bounded.bytes(file, MOST_BYTES);
        int end = endOfWholeLines(bytes);
        return parse(Bounded.text(ByteBuffer.wrap(bytes, 0, end), file), end < bytes.length);
    }

    /** Adds entries in one write: after a crash the log holds all of them, or those before the one that was cut off. */
    void append(OffsetDateTime at, List<LogEntry> entries) throws IOException {
        append(at, entries, Optional.empty());
    }

    /**
     * The same, only where the log is the one that was read.
     *
     * @param head the {@link Content#head} that was read
     * @throws InputException if something was written meanwhile; nothing is added then
     */
    void append(OffsetDateTime at, List<LogEntry> entries, Optional<String> head) throws IOException {
        Turn.in(file.toAbsolutePath().getParent(), () -> {
            write(at, entries, head);
            return true;
        });
    }

    private void write(OffsetDateTime at, List<LogEntry> entries, Optional<String> head) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            channel.lock();
            byte[] bytes = bytes(channel);
            int end = endOfWholeLines(bytes);
            String present = Bounded.text(ByteBuffer.wrap(bytes, 0, end), file);
            int number = (int) present.lines().count();
            String previous = lastHash(present);
            if (head.isPresent() && !head.get().equals(previous)) {
                throw writtenMeanwhile();
            }
            StringBuilder added = new StringBuilder();
            for (LogEntry entry : entries) {
                number++;
                String line = LogJson.line(new LogRecord(number, at, previous, entry,
                        Sha256.of(LogJson.hashed(number, at, previous, entry))));
                previous = Sha256.of(line);
                added.append(line).append('\n');
            }
            channel.truncate(end);
            channel.position(end);
            ByteBuffer rest = StandardCharsets.UTF_8.encode(added.toString());
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private InputException writtenMeanwhile() {
        return new InputException(Place.of(file.toAbsolutePath().getParent().toString()), "something was written into the log meanwhile",
                "look at the files once more, then take them");
    }

    /** Reads through the channel that holds the lock: on some systems nothing else may. */
    private byte[] bytes(FileChannel channel) throws IOException {
        if (channel.size() > MOST_BYTES) {
            throw Bounded.tooLarge(file.getFileName().toString(), MOST_BYTES);
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            continue;
        }
        return bytes.array();
    }

    private Content parse(String text, boolean cutShort) {
        List<LogRecord> records = new ArrayList<>();
        Integer brokenAt = null;
        String previous = Sha256.of("");
        List<String> lines = text.lines().toList();
        for (String line : lines) {
            LogRecord record = read(lines, records.size(), brokenAt != null);
            boolean follows = record.previousSha256().equals(previous) && record.number() == records.size() + 1
                    && record.sha256().equals(Sha256.of(LogJson.hashed(record.number(), record.at(), previous, record.entry())));
            if (!follows && brokenAt == null) {
                brokenAt = records.size() + 1;
            }
            records.add(record);
            previous = Sha256.of(line);
        }
        return new Content(records, Optional.ofNullable(brokenAt), cutShort, previous);
    }

    /** Before anybody is told what to do about a line that cannot be read, the chain is asked whether it was changed since. */
    private LogRecord read(List<String> lines, int index, boolean brokenBefore) {
        String line = lines.get(index);
        String name = file.getFileName().toString();
        try {
            return LogJson.read(line, name, index + 1);
        } catch (InputException trouble) {
            Optional<String> named = index + 1 < lines.size() ? LogJson.previousSha256(lines.get(index + 1)) : Optional.empty();
            boolean asWritten = named.isPresent() && named.get().equals(Sha256.of(line));
            String chain = brokenBefore
                    ? "an earlier line was changed by hand already"
                    : index == 0 ? "it is the first line" : "the chain of hashes holds up to the line before";
            String after = asWritten
                    ? ", and the line after it names this very line, so it was written so"
                    : named.isPresent() ? ", and the line after it names another one, so this line was changed after it was written" : "";
            String problem = "this line of the log cannot be read (" + trouble.getMessage() + "); " + chain + after;
            throw new InputException(trouble.place(), problem,
                    asWritten
                            ? "use the version of the program that wrote it, or a newer one"
                            : "put log.jsonl back from a copy; a line mended by hand breaks the chain, and every finding will say so");
        }
    }

    /** A line that was cut short may end within a character, so the end is looked for in the bytes. */
    private static int endOfWholeLines(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return end;
    }

    private static String lastHash(String wholeLines) {
        List<String> lines = wholeLines.lines().toList();
        return Sha256.of(lines.isEmpty() ? "" : lines.get(lines.size() - 1));
    }
}

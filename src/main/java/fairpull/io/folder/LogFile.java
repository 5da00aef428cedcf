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
 * shows. An act is one write of all its lines, each of which says how many follow. An act of which lines are missing, or the line feed
 * of the last one, is a write that was cut short: it is passed over as a whole and overwritten by the next.
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
     * @param cutShort whether an unfinished act stands behind the last entry
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
        int end = endOfWholeActs(bytes);
        return parse(Bounded.text(ByteBuffer.wrap(bytes, 0, end), file), end < bytes.length);
    }

    /** Adds the entries of one act: whatever happens, the log holds all of them or none. */
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
        boolean isNew = !Files.exists(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            channel.lock();
            byte[] bytes = bytes(channel);
            int end = endOfWholeActs(bytes);
            List<String> present = Bounded.text(ByteBuffer.wrap(bytes, 0, end), file).lines().toList();
            String previous = Sha256.of(present.isEmpty() ? "" : present.get(present.size() - 1));
            if (head.isPresent() && !head.get().equals(previous)) {
                throw writtenMeanwhile();
            }
            add(channel, end, lines(present.size(), at, previous, entries));
        } catch (IOException trouble) {
            if (isNew && Files.exists(file) && Files.size(file) == 0) {
                Files.delete(file);
            }
            throw DiskTrouble.of(file, file, trouble);
        }
    }

    private static String lines(int present, OffsetDateTime at, String head, List<LogEntry> entries) {
        String previous = head;
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < entries.size(); i++) {
            Optional<Integer> following = Optional.of(entries.size() - 1 - i).filter(more -> more > 0);
            LogRecord bare = new LogRecord(present + i + 1, at, previous, entries.get(i), following, "");
            String sha256 = Sha256.of(LogJson.hashed(bare));
            String line = LogJson.line(new LogRecord(bare.number(), at, previous, bare.entry(), following, sha256));
            previous = Sha256.of(line);
            lines.append(line).append('\n');
        }
        return lines.toString();
    }

    /** Where the disk is full, what could be written is cut off again. */
    private static void add(FileChannel channel, int end, String lines) throws IOException {
        channel.truncate(end);
        channel.position(end);
        ByteBuffer rest = StandardCharsets.UTF_8.encode(lines);
        try {
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        } catch (IOException failed) {
            channel.truncate(end);
            throw failed;
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
                    && record.sha256().equals(Sha256.of(LogJson.hashed(record)));
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

    /**
     * A line that was cut short may end within a character, so the end is looked for in the bytes. Lines of an unfinished act that do not
     * follow from what stands before them were put there by hand, and stay to be seen.
     */
    private static int endOfWholeActs(byte[] bytes) {
        int whole = lineFeedBefore(bytes, bytes.length);
        int end = whole;
        String line = lineBefore(bytes, end);
        String first = "";
        while (LogJson.isContinued(line)) {
            first = line;
            end = lineFeedBefore(bytes, end - 1);
            line = lineBefore(bytes, end);
        }
        return end == whole || LogJson.previousSha256(first).equals(Optional.of(Sha256.of(line))) ? end : whole;
    }

    /** {@return the line whose line feed stands before a place, without it; nothing at the beginning} */
    private static String lineBefore(byte[] bytes, int end) {
        int start = end == 0 ? 0 : lineFeedBefore(bytes, end - 1);
        return new String(bytes, start, Math.max(0, end - 1 - start), StandardCharsets.UTF_8);
    }

    /** {@return the place behind the last line feed before a place; 0 where there is none} */
    private static int lineFeedBefore(byte[] bytes, int place) {
        int end = place;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return end;
    }
}

package fairpull.io.json;

import fairpull.domain.InputException;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import java.time.OffsetDateTime;
import java.util.Optional;

/** One record of the log as one line. */
public final class LogJson {
    private LogJson() {
    }

    record Body(int number, OffsetDateTime at, String previousSha256, LogEntry entry, Optional<Integer> following) {
    }

    /** {@return what the hash of a record is taken of: all of it but that hash} */
    public static String hashed(LogRecord record) {
        return JsonFiles.canonical(new Body(record.number(), record.at(), record.previousSha256(), record.entry(), record.following()));
    }

    /** {@return whether a line says that more lines of its act follow, so far as it can be read at all} */
    public static boolean isContinued(String line) {
        try {
            return line.contains("\"following\"") && JsonFiles.tree(line, "").path("following").asInt() > 0;
        } catch (InputException unreadable) {
            return false;
        }
    }

    /** {@return the record in a line; file and line number are for messages} */
    public static LogRecord read(String line, String file, int lineNumber) {
        return JsonFiles.read(line, LogRecord.class, file, lineNumber);
    }

    /** {@return the hash by which a line names the one before it, so far as the line can be read at all} */
    public static Optional<String> previousSha256(String line) {
        try {
            return Optional.of(JsonFiles.tree(line, "").path("previousSha256").asText()).filter(hash -> !hash.isEmpty());
        } catch (InputException unreadable) {
            return Optional.empty();
        }
    }

    /** {@return the record as one line, without its line feed} */
    public static String line(LogRecord record) {
        return JsonFiles.canonical(record);
    }
}

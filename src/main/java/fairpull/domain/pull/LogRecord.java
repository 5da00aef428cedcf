package fairpull.domain.pull;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One line of the log.
 *
 * @param number counted from 1
 * @param at when it was written
 * @param previousSha256 the SHA-256 of the line before; of nothing for the first
 * @param entry what was written
 * @param following how many lines of the same act follow; empty for the last line of an act, or the only one
 * @param sha256 the SHA-256 of all that stands before it, so that a change of the last line shows too
 */
public record LogRecord(int number, OffsetDateTime at, String previousSha256, LogEntry entry, Optional<Integer> following, String sha256) {
    public LogRecord {
        if (following.filter(lines -> lines < 1).isPresent()) {
            throw new IllegalArgumentException("lines that follow are counted from 1, was " + following.get());
        }
    }

    /** The last line of an act, or the only one. */
    public LogRecord(int number, OffsetDateTime at, String previousSha256, LogEntry entry, String sha256) {
        this(number, at, previousSha256, entry, Optional.empty(), sha256);
    }
}

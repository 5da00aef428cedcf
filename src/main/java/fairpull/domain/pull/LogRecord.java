package fairpull.domain.pull;

import java.time.OffsetDateTime;

/**
 * One line of the log.
 *
 * @param number counted from 1
 * @param at when it was written
 * @param previousSha256 the SHA-256 of the line before; of nothing for the first
 * @param entry what was written
 * @param sha256 the SHA-256 of all that stands before it, so that a change of the last line shows too
 */
public record LogRecord(int number, OffsetDateTime at, String previousSha256, LogEntry entry, String sha256) {
}

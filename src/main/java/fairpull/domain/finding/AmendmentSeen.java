package fairpull.domain.finding;

import fairpull.domain.pull.LogEntry;
import java.time.OffsetDateTime;

/**
 * An amendment of a sealed plan and whether it came before or after the first data, told by the order of the log.
 *
 * @param at when it was written
 * @param amendment what was changed and why
 * @param afterFirstData whether a pull had come in before it
 */
public record AmendmentSeen(OffsetDateTime at, LogEntry.Amended amendment, boolean afterFirstData) {
}

package fairpull.domain.finding;

import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * An amendment of a sealed plan and whether it came before or after the first data, told by the order of the log.
 *
 * @param at when it was written
 * @param amendment what was changed and why
 * @param afterFirstData whether a pull had come in before it
 */
public record AmendmentSeen(OffsetDateTime at, LogEntry.Amended amendment, boolean afterFirstData) {

    /** {@return every amendment of a log, in order} */
    public static List<AmendmentSeen> in(DayLog log) {
        int firstData = log.firstData().orElse(Integer.MAX_VALUE);
        return log.amendments().stream().map(record -> new AmendmentSeen(record.at(), (LogEntry.Amended) record.entry(),
                record.number() > firstData)).toList();
    }
}

package fairpull.report.wording;

import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;

/** What an entry of the log says, in a few words. */
public final class EntryWords {
    private EntryWords() {
    }

    /** {@return number and words of a record: {@code 17 (pull B1-3 came in)}} */
    public static String brief(LogRecord record) {
        return record.number() + " (" + of(record.entry()) + ")";
    }

    /** {@return what an entry says} */
    public static String of(LogEntry entry) {
        return entry.match(new InWords());
    }

    private static final class InWords implements LogEntry.Cases<String> {
        @Override
        public String sealed(LogEntry.Sealed sealed) {
            return "sealed as " + sealed.code();
        }

        @Override
        public String amended(LogEntry.Amended amended) {
            return "amended: " + amended.reason();
        }

        @Override
        public String pullTaken(LogEntry.PullTaken taken) {
            return "pull " + taken.pull() + " came in";
        }

        @Override
        public String pullAborted(LogEntry.PullAborted aborted) {
            return "pull " + aborted.pull() + " aborted: " + aborted.reason();
        }

        @Override
        public String excluded(LogEntry.Excluded excluded) {
            return "pull " + excluded.pull() + " left out: " + excluded.reason();
        }

        @Override
        public String readmitted(LogEntry.Readmitted readmitted) {
            return "pull " + readmitted.pull() + " counts again: " + readmitted.reason();
        }

        @Override
        public String conditions(LogEntry.ConditionsNoted noted) {
            return "readings at " + noted.pull();
        }

        @Override
        public String gateOverridden(LogEntry.GateOverridden overridden) {
            return overridden.condition().words() + " passed over at " + overridden.pull() + ": " + overridden.reason();
        }

        @Override
        public String remark(LogEntry.Remark remark) {
            return "remark";
        }

        @Override
        public String look(LogEntry.Look look) {
            return "look " + look.number();
        }

        @Override
        public String pullRun(LogEntry.PullRun run) {
            return "pull " + run.pull() + " done";
        }

        @Override
        public String swap(LogEntry.Swap swap) {
            return "swap to " + swap.install() + (swap.phase() == LogEntry.Swap.Phase.STARTED ? " started" : " finished");
        }

        @Override
        public String takenBack(LogEntry.TakenBack takenBack) {
            return "entry " + takenBack.number() + " taken back";
        }

        @Override
        public String dayEnded(LogEntry.DayEnded ended) {
            return "day ended: " + ended.reason();
        }
    }
}

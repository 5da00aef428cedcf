package fairpull.domain.pull;

import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What may be written in a test's log. The log is only ever added to. */
public sealed interface LogEntry {

    /** {@return what {@code cases} makes of this entry} */
    <R> R match(Cases<R> cases);

    /** One answer a kind of entry. */
    interface Cases<R> {
        R sealed(Sealed sealed);

        R amended(Amended amended);

        R pullTaken(PullTaken taken);

        R pullAborted(PullAborted aborted);

        R excluded(Excluded excluded);

        R readmitted(Readmitted readmitted);

        R conditions(ConditionsNoted noted);

        R gateOverridden(GateOverridden overridden);

        R remark(Remark remark);

        R look(Look look);

        R pullRun(PullRun run);

        R swap(Swap swap);

        R takenBack(TakenBack takenBack);

        R dayEnded(DayEnded ended);
    }

    /** The plan was sealed: its SHA-256, the short code of the seal, and the SHA-256 of the seal as a whole. */
    record Sealed(String planSha256, String code, String sealSha256) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sealed(this);
        }
    }

    /** One place of the plan before and after an amendment, as JSON; empty text where it did not exist. */
    record Change(String place, String before, String after) {
    }

    /** A sealed plan was changed. */
    record Amended(String reason, List<Change> changes, String planSha256Before, String planSha256After) implements LogEntry {
        public Amended {
            changes = List.copyOf(changes);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.amended(this);
        }
    }

    /**
     * A pull came in.
     *
     * @param pull which one
     * @param startedAt when it started, where that is known
     * @param file the raw export's name within the folder {@code pulls}, empty when values were typed; pulls that came in one file name
     *     the same one
     * @param numberInFile which of the pulls in that file it is, counted from 1; empty: the file is this pull
     * @param fileSha256 its SHA-256, empty when values were typed
     * @param mapping the fingerprint of the mapping it is read by, empty when values were typed
     * @param mappingSha256 the SHA-256 of that mapping as it was read, empty when values were typed
     * @param corrected what a typed value is already corrected to; empty: not known
     * @param typedSi values typed in, by name of the measure
     * @param readAnew why the export of a pull that was there already is read otherwise from here on; empty where the pull came in
     */
    record PullTaken(PullId pull, Optional<OffsetDateTime> startedAt, String file, Optional<Integer> numberInFile, String fileSha256,
            String mapping, String mappingSha256, Optional<Correction> corrected, Map<String, Double> typedSi,
            Optional<String> readAnew) implements LogEntry {
        public PullTaken {
            typedSi = Map.copyOf(new TreeMap<>(typedSi));
            numberInFile.ifPresent(number -> {
                if (number < 1) {
                    throw new IllegalArgumentException("the pulls of a file are counted from 1, was " + number);
                }
            });
        }

        /** {@return whether two pulls are the same numbers of the same file} */
        public boolean isSameExport(String otherSha256, Optional<Integer> otherNumber) {
            return fileSha256.equals(otherSha256) && (numberInFile.isEmpty() || otherNumber.isEmpty() || numberInFile.equals(otherNumber));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullTaken(this);
        }
    }

    /** A pull was started and not finished. */
    record PullAborted(PullId pull, String reason) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullAborted(this);
        }
    }

    /** A pull is left out of the judgement, with the reason. */
    record Excluded(PullId pull, String reason) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.excluded(this);
        }
    }

    /** An exclusion is taken back, with the reason. */
    record Readmitted(PullId pull, String reason) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.readmitted(this);
        }
    }

    /** Conditions read at a pull, in SI; a later reading of the same condition replaces an earlier one. */
    record ConditionsNoted(PullId pull, Optional<OffsetDateTime> startedAt, Map<Condition, Double> readingsSi) implements LogEntry {
        public ConditionsNoted {
            readingsSi = Map.copyOf(readingsSi);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.conditions(this);
        }
    }

    /** A pull was run although a gate did not hold, with the reason. */
    record GateOverridden(PullId pull, Condition condition, String reason) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gateOverridden(this);
        }
    }

    /** A remark about a pull, an install or, with an empty subject, the whole test. */
    record Remark(String subject, String text) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.remark(this);
        }
    }

    /** The data were looked at: which look of the test this was, counted from 1, and after how many installs with data. */
    record Look(int number, int afterInstalls) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.look(this);
        }
    }

    /** A pull was run; its export comes in later, or never does, as with warm-ups that are not exported. */
    record PullRun(PullId pull, OffsetDateTime startedAt) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.pullRun(this);
        }
    }

    /** A swap was started or finished. */
    record Swap(String install, Phase phase, OffsetDateTime time) implements LogEntry {
        /** Which end of it. */
        public enum Phase {
            STARTED, FINISHED
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.swap(this);
        }
    }

    /** An entry of the day was a mistake: it stays in the log, and no longer stands. */
    record TakenBack(int number) implements LogEntry {
        public TakenBack {
            if (number < 1) {
                throw new IllegalArgumentException("entries of a log are counted from 1, was " + number);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.takenBack(this);
        }
    }

    /** The day was ended before all of its pulls were run, with the reason: what is missing will not come any more. */
    record DayEnded(String reason) implements LogEntry {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.dayEnded(this);
        }
    }

    /** {@return whether an entry tells of the day, and so can be taken back} */
    default boolean isOfTheDay() {
        return this instanceof PullRun || this instanceof Swap || this instanceof PullTaken || this instanceof PullAborted
                || this instanceof ConditionsNoted || this instanceof GateOverridden || this instanceof DayEnded;
    }
}

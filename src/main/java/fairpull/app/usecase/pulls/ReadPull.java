package fairpull.app.usecase.pulls;

import fairpull.app.task.Memory;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Question;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.engine.check.Checklist;
import fairpull.engine.check.Checklist.Looked;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.Export;
import fairpull.io.table.ExportFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * One pull as its export was read by a mapping.
 *
 * <p>What was read is remembered by the hash of the file's bytes and of the mapping, so that a long test is read once and not at each page:
 * the bytes are hashed whenever they are asked for, which takes a tenth of reading them, and a file that changed is read anew.
 *
 * @param channels what the mapping reads, in SI
 * @param plain the same, and beside it whatever else in the export is plain
 * @param units the units that {@code plain} was read in
 * @param readsThrottle whether the throttle is among what the mapping reads
 * @param correctedOverMeasured the median of corrected over uncorrected power (or torque) where the export has both
 */
record ReadPull(Channels channels, Channels plain, Map<Quantity, Unit> units, boolean readsThrottle,
        OptionalDouble correctedOverMeasured) {
    /** What memory there is, in numbers of eight bytes; a quarter of it is for what was read, an eighth for what the checks saw in it. */
    private static final long NUMBERS = Runtime.getRuntime().maxMemory() / Double.BYTES;
    private static final Memory<Key, ReadPull> READ = new Memory<>(NUMBERS / 4, ReadPull::numbers);
    private static final Memory<Seen, Looked> LOOKED = new Memory<>(NUMBERS / 8, Looked::numbers);

    ReadPull {
        units = Map.copyOf(units);
    }

    /** What a look at a pull depends on: what was read is compared by identity, which a pull that is remembered keeps. */
    private record Seen(Channels plain, PullTrace trace, Question question) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Seen seen && plain == seen.plain && question.equals(seen.question)
                    && trace.pull().equals(seen.trace.pull()) && trace.used() == seen.trace.used()
                    && trace.factor().equals(seen.trace.factor());
        }

        @Override
        public int hashCode() {
            return Objects.hash(System.identityHashCode(plain), trace.pull(), trace.used(), trace.factor());
        }
    }

    private record Key(String fileSha256, String mappingSha256, Optional<Integer> numberInFile) {
    }

    /** {@return the pull whose export came in with a log entry} */
    static ReadPull of(TestFolder test, List<Mapping> mappings, LogEntry.PullTaken taken) {
        Mapping mapping = PullValues.mapping(mappings, taken);
        Path file = file(test, taken);
        return remembered(sha256(file), mapping, taken.numberInFile(), () -> PullTraces.read(export(file, mapping, taken), mapping));
    }

    /** {@return a pull of a file whose hash is known, made by {@code reading} where it is not remembered} */
    static ReadPull remembered(String fileSha256, Mapping mapping, Optional<Integer> numberInFile, Supplier<ReadPull> reading) {
        return READ.of(new Key(fileSha256, TestFolder.sha256(mapping), numberInFile), reading);
    }

    private static Path file(TestFolder test, LogEntry.PullTaken taken) {
        Path file = test.export(taken.file());
        if (!Files.isRegularFile(file)) {
            throw new InputException(Place.of("pulls/" + taken.file()), "the export of pull " + taken.pull() + " is gone",
                    new Remedy("restore it from a copy, or leave the pull out with `fairpull exclude`",
                    "restore it from a copy, or leave the pull out with a reason, beneath the table of pulls"));
        }
        return file;
    }

    private static String sha256(Path file) {
        try {
            return Sha256.of(file);
        } catch (IOException unreadable) {
            throw new InputException(Place.of(file.toString()), String.valueOf(unreadable.getMessage()),
                    "look whether the file may be read");
        }
    }

    private static Export export(Path path, Mapping mapping, LogEntry.PullTaken taken) {
        ExportFile file = ExportFile.whole(path, mapping.decimalMark());
        return taken.numberInFile().map(number -> SweptFile.parted(file, mapping).pull(number)).orElseGet(file::table);
    }

    private long numbers() {
        return (long) plain.rows() * plain.all().size();
    }

    /** {@return the pull as the checks that look at one pull at a time see it; parameters as {@link #trace}} */
    Looked looked(PullId pull, boolean used, Question question, PulledAir air) {
        PullTrace trace = trace(pull, used, question.deciding(), air);
        return LOOKED.of(new Seen(plain, trace, question), () -> Checklist.look(question, trace));
    }

    /**
     * {@return what the pull shows the checks}
     *
     * @param used whether its value counts
     * @param deciding the measure whose standard the air is held against
     * @param air the air noted at the pull
     */
    private PullTrace trace(PullId pull, boolean used, Measure deciding, PulledAir air) {
        OptionalDouble factor = !PulledAir.concerns(deciding) || deciding.correction() == Correction.NONE ? OptionalDouble.empty()
                : air.multiplierIfKnown(Correction.NONE, deciding.correction());
        return new PullTrace(pull, used, plain, readsThrottle, units, correctedOverMeasured, factor);
    }
}

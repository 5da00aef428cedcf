package fairpull.app.usecase.running;

import fairpull.app.task.Progress;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.PreparedImport;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.LogRecord;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.ExportFile;
import fairpull.io.table.GuessedColumn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Takes an export that appeared in the watched folder as the pull that waits for it. */
public final class TakeExport {
    /** So many of the last exports may still grow. */
    private static final int LATEST = 5;
    private static final Map<Condition, Pattern> HEADINGS = new EnumMap<>(Map.of(
            Condition.INTAKE_AIR, heading("intake|inlet|\\biat\\b|ansaug"),
            Condition.COOLANT, heading("coolant|\\bect\\b|\\bclt\\b|wasser"),
            Condition.OIL, heading("\\boil\\b|\\böl"), Condition.GEARBOX, heading("gearbox|transmission|getriebe"),
            Condition.BAROMETER, heading("baro|ambient pressure|station pressure|luftdruck"),
            Condition.HUMIDITY, heading("humid|feucht"), Condition.TYRE_PRESSURE, heading("tyre|tire|reifen")));

    private TakeExport() {
    }

    /**
     * A pull that was taken.
     *
     * @param pull which one
     * @param file the name of its export
     * @param doubts what is not certain about it, one sentence each
     */
    public record Taken(PullId pull, String file, List<String> doubts) {
    }

    private static Pattern heading(String words) {
        return Pattern.compile("(?iU).*(" + words + ").*");
    }

    /**
     * Takes an export: as the pull that its name says, else as the first counted pull that was run and has none, else as the warm-up
     * that was run last, if it has none, else as the next pull. Gates are read from its first row where one column alone is headed so.
     * One that has grown since it was taken takes the place of what it was. After an abort nobody knows whether it is of the stopped pull.
     *
     * @throws InputException if it cannot be read without being asked, was taken before, or is of no pull that waits
     */
    public static Taken take(Path folder, Path file, OffsetDateTime now) throws IOException {
        RunDay day = RunDay.of(folder);
        refuseTwice(day, file);
        Optional<LogRecord> shorter = shorter(day, file);
        if (shorter.isPresent()) {
            PullId same = ((LogEntry.PullTaken) shorter.get().entry()).pull();
            Taken grown = take(day, day.log().actOf(shorter.get().number()), file, Optional.empty(), same, now);
            return new Taken(grown.pull(), grown.file(), Stream.concat(Stream.of("it has grown since it was taken first, and the whole of "
                    + "it was taken in its place"), grown.doubts().stream()).toList());
        }
        Optional<PullId> named = named(day, file);
        PullId pull = named.or(() -> waiting(day)).or(() -> unlessStopped(day, file, now)).or(() -> lastWarmUp(day))
                .or(() -> day.next(now).pull()).orElseThrow(() -> refused(file, "no pull waits for an export"));
        return take(day, List.of(), file, named, pull, now);
    }

    private static InputException refused(Path file, String problem) {
        return new InputException(Place.of(file.getFileName().toString()), problem, "say on the page Pulls which pull it is");
    }

    /** Never gives a pull. */
    private static Optional<PullId> unlessStopped(RunDay day, Path file, OffsetDateTime now) {
        if (day.next(now).again()) {
            throw refused(file, day.next(now).pull().orElseThrow() + " was aborted and not marked as run again, so this may be the "
                    + "stopped pull");
        }
        return Optional.empty();
    }

    /** {@return what was taken of a file before it grew: the bytes that were kept are the first ones of it} */
    private static Optional<LogRecord> shorter(RunDay day, Path file) throws IOException {
        List<LogRecord> taken = day.log().standing().stream().filter(record -> record.entry() instanceof LogEntry.PullTaken one
                && !one.file().isEmpty()).toList();
        for (LogRecord record : taken.subList(Math.max(0, taken.size() - LATEST), taken.size())) {
            Path kept = TestFolder.open(day.folder()).export(((LogEntry.PullTaken) record.entry()).file());
            if (Files.exists(kept) && Files.size(kept) < Files.size(file) && Files.mismatch(kept, file) == Files.size(kept)) {
                return Optional.of(record);
            }
        }
        return Optional.empty();
    }

    /** When nobody said when a pull began: its file was written at the end of it. */
    private static OffsetDateTime written(RunDay day, Path file, OffsetDateTime now) throws IOException {
        OffsetDateTime written = Files.getLastModifiedTime(file).toInstant().atOffset(now.getOffset()).truncatedTo(ChronoUnit.SECONDS);
        boolean isSound = written.isBefore(now) && day.log().standing().stream().noneMatch(record -> record.at().isAfter(written));
        return isSound ? written : now;
    }

    /** One write: a kill leaves no pull without its gates and none taken back for nothing, and one undo takes both back. */
    private static Taken take(RunDay before, List<LogRecord> takenBack, Path file, Optional<PullId> named, PullId pull, OffsetDateTime now)
            throws IOException {
        Path folder = before.folder();
        RunDay day = new RunDay(folder, before.plan(), before.log().takingBack(takenBack));
        Optional<OffsetDateTime> known = day.log().startOf(pull);
        OffsetDateTime started = known.isPresent() ? known.get() : written(day, file, now);
        ImportPulls.Request request = new ImportPulls.Request(folder, List.of(file), named.isPresent() ? Optional.empty()
                : Optional.of(pull.install()), named.isPresent() ? OptionalInt.empty() : OptionalInt.of(pull.number()), pull.warmUp(),
                new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false, Optional.empty()),
                Optional.of(started));
        PreparedImport prepared = ImportPulls.prepare(request, takenBack);
        Map<Condition, Double> readings = prepared.files().get(0).refusal().isEmpty() ? readings(day, file, pull) : Map.of();
        List<ImportPulls.Taken> taken = prepared.take(now, readings.isEmpty() ? List.of()
                : List.of(new LogEntry.ConditionsNoted(pull, Optional.empty(), readings)), Progress.none());
        return new Taken(pull, file.getFileName().toString(), taken.get(0).doubts());
    }

    /** Whether a pull waits or not, a file that came in already is told as such. */
    private static void refuseTwice(RunDay day, Path file) throws IOException {
        String sha256 = Sha256.of(file);
        Optional<PullId> same = day.log().pulls().values().stream().filter(taken -> taken.fileSha256().equals(sha256))
                .map(LogEntry.PullTaken::pull).findFirst();
        if (same.isPresent()) {
            throw new InputException(Place.of(file.getFileName().toString()), "the same bytes as pull " + same.get()
                    + ": a file exported twice?", "give the export of this pull");
        }
    }

    /** {@return the hash of a file} */
    public static String hash(Path file) throws IOException {
        return Sha256.of(file);
    }

    /** {@return whether the bytes of a file ever came into the test, also where they were taken back, or have a hash that was refused} */
    public static Predicate<Path> known(Path folder, List<String> refused) throws IOException {
        Set<String> came = Stream.concat(refused.stream(),
                RunDay.of(folder).log().records().stream().filter(record -> record.entry() instanceof LogEntry.PullTaken)
                .map(record -> ((LogEntry.PullTaken) record.entry()).fileSha256())).collect(Collectors.toSet());
        return file -> {
            try {
                return came.contains(Sha256.of(file));
            } catch (IOException unreadable) {
                return false;
            }
        };
    }

    private static Optional<PullId> named(RunDay day, Path file) {
        Set<PullId> planned = PlannedClock.of(day.plan().sequence()).minutes().keySet();
        return PullId.ofFileName(file.getFileName().toString()).filter(planned::contains);
    }

    private static Optional<PullId> waiting(RunDay day) {
        List<PullId> run = List.copyOf(day.log().run().keySet());
        Predicate<PullId> open = pull -> !day.log().pulls().containsKey(pull);
        return run.stream().filter(pull -> !pull.warmUp()).filter(open).findFirst();
    }

    private static Optional<PullId> lastWarmUp(RunDay day) {
        return day.log().run().keySet().stream().reduce((first, last) -> last).filter(pull -> !day.log().pulls().containsKey(pull));
    }

    /** Only what nobody typed is read; a column that is read so has the condition's name and quantity, and is the only one. */
    private static Map<Condition, Double> readings(RunDay day, Path file, PullId pull) {
        Map<Condition, Double> present = day.log().conditionsAt(pull);
        Map<Condition, Double> found = new EnumMap<>(Condition.class);
        List<GuessedColumn> columns = ColumnGuess.guess(ExportFile.look(file, Optional.empty()).sample()).columns();
        for (Gate gate : day.plan().gates()) {
            Condition condition = gate.condition();
            List<GuessedColumn> fitting = columns.stream().filter(column -> HEADINGS.get(condition)
                    .matcher(column.column().label()).matches()
                    && column.unit().filter(unit -> unit.quantity() == condition.quantity()).isPresent()).toList();
            if (fitting.size() == 1 && !present.containsKey(condition)) {
                GuessedColumn column = fitting.get(0);
                column.column().numbers().stream().filter(Double::isFinite).findFirst()
                        .ifPresent(first -> found.put(condition, column.unit().orElseThrow().toSi(first)));
            }
        }
        return found;
    }
}

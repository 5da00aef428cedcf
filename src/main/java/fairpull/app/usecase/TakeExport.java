package fairpull.app.usecase;

import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Gate;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.Sha256;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.ExportFile;
import fairpull.io.table.GuessedColumn;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Takes an export that appeared in the watched folder as the pull that waits for it. */
public final class TakeExport {
    private static final Pattern NAMED = Pattern.compile("([AB]\\d{1,3}-W?\\d{1,4})(?![\\dA-Za-z]).*");
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
     *
     * @throws InputException if it cannot be read without being asked, was taken before, or is of no pull that waits
     */
    public static Taken take(Path folder, Path file, OffsetDateTime now) throws IOException {
        RunDay day = RunDay.of(folder);
        Optional<PullId> named = named(day, file);
        refuseTwice(day, file);
        PullId pull = named.or(() -> waiting(day)).or(() -> day.next(now).pull()).orElseThrow(() -> new InputException(
                Place.of(file.getFileName().toString()), "no pull waits for an export",
                "say on the page Pulls which pull it is"));
        OffsetDateTime started = day.log().startOf(pull).orElse(now);
        ImportPulls.Request request = new ImportPulls.Request(folder, List.of(file), named.isPresent() ? Optional.empty()
                : Optional.of(pull.install()), named.isPresent() ? OptionalInt.empty() : OptionalInt.of(pull.number()), pull.warmUp(),
                new ImportPulls.Reading(List.of(), StatedCorrection.nothing(), Optional.empty(), false, Optional.empty()),
                Optional.of(started));
        PreparedImport prepared = ImportPulls.prepare(request, Progress.none());
        Map<Condition, Double> readings = prepared.files().get(0).refusal().isEmpty() ? readings(day, file, pull) : Map.of();
        // one write: a kill leaves no pull without its gates, and one undo takes both back
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

    /** {@return whether the bytes of a file ever came into the test, also where they were taken back} */
    public static Predicate<Path> known(Path folder) throws IOException {
        Set<String> came = RunDay.of(folder).log().records().stream().filter(record -> record.entry() instanceof LogEntry.PullTaken)
                .map(record -> ((LogEntry.PullTaken) record.entry()).fileSha256()).collect(Collectors.toSet());
        return file -> {
            try {
                return came.contains(Sha256.of(file));
            } catch (IOException unreadable) {
                return false;
            }
        };
    }

    private static Optional<PullId> named(RunDay day, Path file) {
        Matcher name = NAMED.matcher(file.getFileName().toString());
        Set<PullId> planned = PlannedClock.of(day.plan().sequence()).minutes().keySet();
        return name.matches() ? PullId.parse(name.group(1)).filter(planned::contains) : Optional.empty();
    }

    private static Optional<PullId> waiting(RunDay day) {
        List<PullId> run = List.copyOf(day.log().run().keySet());
        Predicate<PullId> open = pull -> !day.log().pulls().containsKey(pull);
        return run.stream().filter(pull -> !pull.warmUp()).filter(open).findFirst()
                .or(() -> run.stream().reduce((first, last) -> last).filter(open));
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

package fairpull.app.usecase;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnChoice;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.Export;
import fairpull.io.table.ExportReader;
import fairpull.io.table.MappedExport;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes exports into a test: all of the files or none. */
public final class ImportPulls {
    /** A file that says itself which pull it holds: {@code B1-3.csv}, {@code A1-W2 second try.txt}. */
    private static final Pattern NAMED = Pattern.compile("([AB]\\d{1,3}-W?\\d{1,4})(?![\\dA-Za-z]).*");

    private final Request request;
    private final TestFolder test;
    private final TestFolder.Content content;

    private ImportPulls(Request request, TestFolder test, TestFolder.Content content) {
        this.request = request;
        this.test = test;
        this.content = content;
    }

    /**
     * What is to be imported.
     *
     * @param folder the test
     * @param files the exports, one a pull
     * @param install the install they belong to; empty where the file names say
     * @param firstPull the number of the first of them; the next free one where it is not given
     * @param warmUps whether they are warm-ups
     * @param reading how they are to be read
     * @param startedAt when the pull started, for a single file
     */
    public record Request(Path folder, List<Path> files, Optional<String> install, OptionalInt firstPull, boolean warmUps,
            Reading reading, Optional<OffsetDateTime> startedAt) {
    }

    /**
     * How exports are to be read, where that is said.
     *
     * @param columns which column is which quantity, as typed ({@code power=P wheel:kW}), where the reader's guess is not wanted
     * @param corrected what was said of how the values are corrected
     * @param decimalMark the decimal mark; empty: the file tells, or as remembered for this header
     */
    public record Reading(List<String> columns, StatedCorrection corrected, Optional<DecimalMark> decimalMark) {
    }

    /**
     * A pull that was taken.
     *
     * @param pull which one
     * @param file the file it came from
     * @param values its measures in their own units, by name; empty for a warm-up
     * @param doubts what is not certain about them, one sentence each
     */
    public record Taken(PullId pull, String file, Map<Measure, Double> values, List<String> doubts) {
    }

    private record Checked(PullId pull, Path file, String sha256, Mapping mapping, Map<Measure, Double> values, List<String> doubts) {
    }

    /** Imports the files; returns what was taken. */
    public static List<Taken> run(Request request, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(request.folder());
        return new ImportPulls(request, test, test.read()).run(now);
    }

    private List<Taken> run(OffsetDateTime now) throws IOException {
        if (request.startedAt().isPresent() && request.files().size() != 1) {
            throw new UsageException("--at", "the start of one pull, but " + request.files().size() + " files are given");
        }
        List<Checked> all = new ArrayList<>();
        for (Map.Entry<Path, PullId> assigned : assign().entrySet()) {
            all.add(check(assigned.getKey(), assigned.getValue(), all));
        }
        List<LogEntry> entries = new ArrayList<>();
        for (Checked checked : all) {
            String kept = test.keepExport(checked.file(), checked.pull().toString());
            test.remember(checked.mapping());
            entries.add(new LogEntry.PullTaken(checked.pull(), request.startedAt(), kept, checked.sha256(), checked.mapping().fingerprint(),
                    TestFolder.sha256(checked.mapping()), checked.mapping().corrected(), Map.of()));
        }
        test.append(now, entries);
        return all.stream().map(checked -> new Taken(checked.pull(), checked.file().getFileName().toString(), checked.values(),
                checked.doubts())).toList();
    }

    private Map<Path, PullId> assign() {
        Map<Path, PullId> assigned = new LinkedHashMap<>();
        int next = request.firstPull().orElseGet(this::nextFree);
        for (Path file : request.files()) {
            PullId pull = request.install().isPresent() ? new PullId(request.install().get(), request.warmUps(), next++) : named(file);
            if (assigned.containsKey(file)) {
                throw new InputException(Place.of(file.toString()), "the file is given twice", "give each pull a file of its own");
            }
            if (assigned.containsValue(pull)) {
                throw new InputException(Place.of(file.toString()), "two files for pull " + pull, "give each pull one file");
            }
            Planned.check(content.plan(), pull);
            if (content.log().pulls().containsKey(pull)) {
                throw new InputException(Place.of(file.toString()), "pull " + pull + " is there already",
                        "a pull is never replaced; exclude it with a reason, or name another pull");
            }
            assigned.put(file, pull);
        }
        return assigned;
    }

    private int nextFree() {
        return request.install().flatMap(label -> content.plan().sequence().installs()
                .filter(install -> install.label().equals(label))
                .flatMap(install -> PlannedClock.pullsOf(install).stream())
                .filter(pull -> pull.warmUp() == request.warmUps())
                .filter(pull -> !content.log().pulls().containsKey(pull) && !content.log().aborted().containsKey(pull))
                .map(PullId::number)
                .findFirst()).orElse(1);
    }

    private static PullId named(Path file) {
        Matcher name = NAMED.matcher(file.getFileName().toString());
        return (name.matches() ? PullId.parse(name.group(1)) : Optional.<PullId>empty()).orElseThrow(() -> new InputException(
                Place.of(file.toString()), "the name does not say which pull it holds",
                "name it like B1-3.csv (A1-W2.csv for a warm-up), or give --install B1 --pull 3"));
    }

    private Checked check(Path file, PullId pull, List<Checked> before) throws IOException {
        Export export = ExportReader.read(file, request.reading().decimalMark());
        String sha256 = Sha256.of(file);
        refuseDuplicate(file, sha256, before);
        Mapping mapping = mapping(export);
        List<Measure> measures = content.plan().question().measures();
        Map<Measure, Double> values = new LinkedHashMap<>();
        List<String> doubts = new ArrayList<>(export.doubts());
        if (!pull.warmUp()) {
            Channels channels = MappedExport.channels(export, mapping);
            PullValues.checkDeciding(channels, measures.get(0), file.getFileName().toString(),
                    "leave the file out, or note the pull as aborted");
            measures.stream().filter(measure -> PulledAir.isNeeded(measure, mapping.corrected())).forEach(measure ->
                    PulledAir.refuseWithoutFuel(Place.of(file.toString()), pull, mapping.corrected().get(), measure.correction()));
            doubts.addAll(PullValues.doubts(channels, measures));
            if (mapping.corrected().isEmpty() && measures.stream().anyMatch(PullValues::canBeCorrected)) {
                doubts.add("not known whether the values are corrected for air; say so with --corrected");
            }
            Map<String, Double> si = PullValues.of(channels, measures);
            measures.stream().filter(measure -> si.containsKey(measure.name()))
                    .forEach(measure -> values.put(measure, measure.unit().fromSi(si.get(measure.name()))));
            Optional.ofNullable(si.get(measures.get(0).name())).filter(content.plan().question()::isFarFromExpected)
                    .ifPresent(far -> doubts.add(measures.get(0).name() + " is further than half the expected level from it"));
        }
        return new Checked(pull, file, sha256, mapping, values, doubts);
    }

    private void refuseDuplicate(Path file, String sha256, List<Checked> before) {
        Optional<PullId> same = content.log().pulls().values().stream()
                .filter(taken -> taken.fileSha256().equals(sha256))
                .map(LogEntry.PullTaken::pull)
                .findFirst()
                .or(() -> before.stream().filter(checked -> checked.sha256().equals(sha256)).map(Checked::pull).findFirst());
        same.ifPresent(pull -> {
            throw new InputException(Place.of(file.toString()), "the same bytes as pull " + pull + ": a file exported twice?",
                    "give the export of this pull");
        });
    }

    /** What was typed now outranks what is remembered for this header, and that outranks the guess. */
    private Mapping mapping(Export export) {
        Optional<Mapping> remembered = content.mappings().stream()
                .filter(known -> known.fingerprint().equals(export.fingerprint()))
                .reduce((first, last) -> last);
        if (remembered.isPresent() && request.reading().columns().isEmpty()) {
            Mapping known = remembered.get();
            return known.withCorrected(request.reading().corrected().over(known.corrected()))
                    .withDecimalMark(request.reading().decimalMark());
        }
        return ColumnGuess.mapping(export, needed(), choices(), request.reading().corrected().standard())
                .withDecimalMark(request.reading().decimalMark());
    }

    private Set<Quantity> needed() {
        Set<Quantity> needed = EnumSet.noneOf(Quantity.class);
        content.plan().question().measures().forEach(measure -> needed.addAll(measure.definition().channels()));
        if (needed.isEmpty()) {
            throw new InputException(Place.of("plan.json"), "every measure of this plan is typed by hand, none is read from exports",
                    "type the values: fairpull note TEST B1-3 --value 13.42s");
        }
        return needed;
    }

    private Map<Quantity, ColumnChoice> choices() {
        Map<Quantity, ColumnChoice> choices = new EnumMap<>(Quantity.class);
        for (String typed : request.reading().columns()) {
            Map.Entry<Quantity, ColumnChoice> choice = ColumnChoice.parse(typed).orElseThrow(() -> new UsageException("--column",
                    "expected QUANTITY=NAME[:UNIT], such as power=\"P wheel\":kW; found “" + typed + "”"));
            choices.put(choice.getKey(), choice.getValue());
        }
        return choices;
    }
}

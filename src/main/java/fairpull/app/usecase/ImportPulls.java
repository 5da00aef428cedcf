package fairpull.app.usecase;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.DecimalMark;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.PullTrace;
import fairpull.domain.unit.Quantity;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.CurveTableWriter;
import fairpull.io.table.Export;
import fairpull.io.table.ExportFile;
import fairpull.io.table.MappedExport;
import fairpull.report.wording.NoticeWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Takes exports into a test: all of the files or none. */
public final class ImportPulls {
    private final Request request;
    private final TestFolder test;
    private final TestFolder.Content content;
    private final CarriedAir air;
    private final List<PullTrace> traces;
    private final Assignment assignment;
    private final ReadAnew readAnew;

    private ImportPulls(Request request, TestFolder test, TestFolder.Content content) {
        this.request = request;
        this.test = test;
        this.content = content;
        this.air = new CarriedAir(content.plan().sequence(), content.log());
        this.traces = new ArrayList<>(PullChecks.traces(test, content));
        this.readAnew = new ReadAnew(content.log(), request.reading().because());
        this.assignment = new Assignment(request, content, readAnew);
    }

    /**
     * What is to be imported.
     *
     * @param folder the test
     * @param files the exports; one may hold several pulls
     * @param install the install they belong to; empty where file names or headings say
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
     * @param onePull whether each file is one pull, even where it looks like several
     * @param because why the exports of pulls that are there already are read anew; empty where pulls come in
     */
    public record Reading(List<String> columns, StatedCorrection corrected, Optional<DecimalMark> decimalMark, boolean onePull,
            Optional<String> because) {
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

    private record Checked(PullId pull, Path file, Optional<Integer> numberInFile, String sha256, Mapping mapping,
            Map<Measure, Double> values, List<String> doubts) {
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
        for (Path file : request.files()) {
            check(file, all);
        }
        if (request.startedAt().isPresent() && all.size() != 1) {
            throw new UsageException("--at", "the start of one pull, but the file holds " + all.size());
        }
        Map<Path, String> kept = new HashMap<>();
        List<LogEntry> entries = new ArrayList<>();
        for (Checked checked : all) {
            if (readAnew.because().isEmpty() && !kept.containsKey(checked.file())) {
                kept.put(checked.file(), test.keepExport(checked.file(), checked.pull().toString()));
            }
            test.remember(checked.mapping());
            String name = kept.getOrDefault(checked.file(), "");
            entries.add(readAnew.entry(new LogEntry.PullTaken(checked.pull(), request.startedAt(), name, checked.numberInFile(),
                    checked.sha256(), checked.mapping().fingerprint(), TestFolder.sha256(checked.mapping()), checked.mapping().corrected(),
                    Map.of(), Optional.empty())));
        }
        test.append(now, entries);
        return all.stream().map(checked -> new Taken(checked.pull(), checked.file().getFileName().toString(), checked.values(),
                checked.doubts())).toList();
    }

    /** Checks the pulls of a file; their values come from all of its rows, however few tell what the columns are. */
    private void check(Path path, List<Checked> all) throws IOException {
        ExportFile look = ExportFile.look(path, request.reading().decimalMark());
        List<PullId> pulls = assignment.of(path, look);
        boolean alone = request.reading().onePull() || look.pulls() == 1 && look.named().isEmpty();
        if (look.table().columns().stream().anyMatch(column -> CurveTableWriter.isOnGrid(column.header()))) {
            throw new InputException(Place.of(path.toString()), "its curves were smoothed for a finding and would be smoothed again",
                    "import the raw exports; curve-points.csv of the same folder is judged by judge --curves");
        }
        Mapping mapping = mapping(request.reading().onePull() ? look.table() : look.sample());
        ExportFile file = look.isWhole() ? look : ExportFile.read(path, mapping);
        String sha256 = Sha256.of(path);
        for (int i = 0; i < pulls.size(); i++) {
            Optional<Integer> number = alone ? Optional.empty() : Optional.of(i + 1);
            readAnew.checkBytes(path, pulls.get(i), sha256);
            refuseDuplicate(path, sha256, number, pulls.get(i), all);
            Export export = alone ? file.table() : file.pull(i + 1);
            List<String> doubts = new ArrayList<>(export.doubts());
            String name = path.getFileName() + number.map(one -> ", pull " + one + " in it").orElse("");
            Map<Measure, Double> values = pulls.get(i).warmUp() ? Map.of() : values(export, pulls.get(i), mapping, name, doubts);
            checkTrace(export, pulls.get(i), mapping, doubts);
            all.add(new Checked(pulls.get(i), path, number, sha256, mapping, values, doubts));
        }
    }

    private Map<Measure, Double> values(Export export, PullId pull, Mapping mapping, String name, List<String> doubts) {
        List<Measure> measures = content.plan().question().measures();
        Channels channels = MappedExport.channels(export, mapping);
        PullValues.checkDeciding(channels, content.plan(), name, "leave it out, and note the pull as aborted");
        measures.stream().filter(measure -> PulledAir.isNeeded(measure, mapping.corrected())).forEach(measure ->
                PulledAir.refuseWithoutFuel(Place.of(export.fileName()), pull, mapping.corrected().get(), measure.correction()));
        doubts.addAll(PullValues.doubts(channels, content.plan()));
        if (mapping.corrected().isEmpty() && measures.stream().anyMatch(PullValues::canBeCorrected)) {
            doubts.add("not known whether the values are corrected for air; say so with --corrected");
        }
        Map<String, Double> si = PullValues.of(channels, content.plan());
        Map<Measure, Double> values = new LinkedHashMap<>();
        measures.stream().filter(measure -> si.containsKey(measure.name()))
                .forEach(measure -> values.put(measure, measure.unit().fromSi(si.get(measure.name()))));
        Optional.ofNullable(si.get(measures.get(0).name())).filter(content.plan().question()::isFarFromExpected)
                .ifPresent(far -> doubts.add(measures.get(0).name() + " is further than half the expected level from it"));
        return values;
    }

    /** What the pull shows against itself and against those that came before. */
    private void checkTrace(Export export, PullId pull, Mapping mapping, List<String> doubts) {
        Measure deciding = content.plan().question().deciding();
        traces.removeIf(trace -> trace.pull().equals(pull));
        PullTraces.of(pull, !pull.warmUp(), export, mapping, deciding, air.at(pull)).ifPresent(trace -> {
            doubts.addAll(PullChecks.doubts(content.plan().question(), trace, traces));
            SweepDoubts.of(content.plan(), List.of(trace)).forEach(notice -> doubts.add(NoticeWords.sentence(notice, "")));
            if (trace.factor().isPresent()) {
                List<String> open = PullTraces.unpaired(export, mapping);
                if (!open.isEmpty()) {
                    doubts.add("whether the values were corrected twice or not at all cannot be checked: of the columns "
                            + String.join(", ", open) + " no two are named corrected and uncorrected");
                }
            }
            traces.add(trace);
        });
    }

    private void refuseDuplicate(Path file, String sha256, Optional<Integer> number, PullId now, List<Checked> before) {
        Optional<PullId> same = content.log().pulls().values().stream()
                .filter(taken -> taken.isSameExport(sha256, number) && !readAnew.isReplaced(taken.pull(), now))
                .map(LogEntry.PullTaken::pull)
                .findFirst()
                .or(() -> before.stream().filter(checked -> checked.sha256().equals(sha256) && !checked.file().equals(file))
                        .map(Checked::pull).findFirst());
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
        return ColumnGuess.mapping(export, needed(), TypedColumns.choices(request.reading().columns()),
                readAnew.corrected(request.reading().corrected(), remembered))
                .withDecimalMark(request.reading().decimalMark());
    }

    private Set<Quantity> needed() {
        Set<Quantity> needed = EnumSet.noneOf(Quantity.class);
        content.plan().question().measures().forEach(measure -> needed.addAll(measure.definition().channels()));
        if (!needed.isEmpty() && content.plan().scoredWindow().isPresent()) {
            needed.add(Quantity.FRACTION);
        }
        if (!needed.isEmpty() && content.plan().rig().movingMass().isPresent()) {
            needed.add(Quantity.SPEED);
        }
        if (needed.isEmpty()) {
            throw new InputException(Place.of("plan.json"), "every measure of this plan is typed by hand, none is read from exports",
                    "type the values: fairpull note TEST B1-3 --value 13.42s");
        }
        return needed;
    }
}

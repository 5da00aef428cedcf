package fairpull.app.usecase.pulls;

import fairpull.app.usecase.typing.TypedColumns;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.engine.check.Checklist.Looked;
import fairpull.engine.curve.Outcome;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.CurveTableWriter;
import fairpull.io.table.Export;
import fairpull.io.table.ExportFile;
import fairpull.io.table.MissingValues;
import fairpull.report.wording.NoticeWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Checks one file of an import by itself: what it is read as, what its pulls measure, what is doubtful about each. */
final class FileCheck {
    /** What remedies it depends on where it is read. */
    static final String CORRECTION_UNKNOWN = "not known whether the values are corrected for air";

    private final TestFolder.Content content;
    private final Plan plan;
    private final ImportPulls.Reading reading;
    private final ReadAnew readAnew;
    private final Surface surface;
    private final CarriedAir air;

    FileCheck(TestFolder.Content content, ImportPulls.Reading reading, ReadAnew readAnew, Surface surface) {
        this.surface = surface;
        this.content = content;
        this.plan = content.plan();
        this.reading = reading;
        this.readAnew = readAnew;
        this.air = new CarriedAir(plan.sequence(), content.log());
    }

    /** A file and its pulls. */
    record Result(Path path, String sha256, Mapping mapping, List<Pull> pulls) {
        /** {@return the same with what was found between pulls} */
        Result with(Map<PullId, List<String>> pairs) {
            return new Result(path, sha256, mapping, pulls.stream().map(pull -> pull.with(pairs.getOrDefault(pull.id(), List.of())))
                    .toList());
        }

        PreparedImport.Checked checked() {
            return new PreparedImport.Checked(path, sha256, Optional.of(mapping), pulls.stream().map(pull ->
                    new PreparedImport.Checked.OfPull(pull.number(), new ImportPulls.Taken(pull.id(), path.getFileName().toString(),
                            pull.values(), pull.doubts()))).toList(), Optional.empty());
        }
    }

    /**
     * One pull of it.
     *
     * @param own how many of the doubts stand before those about pairs of pulls
     */
    record Pull(PullId id, Optional<Integer> number, Map<Measure, Double> values, List<String> doubts, int own,
            Optional<Looked> trace) {
        private Pull with(List<String> pairs) {
            List<String> all = new ArrayList<>(doubts);
            all.addAll(own, pairs);
            return new Pull(id, number, values, all, own, trace);
        }
    }

    /**
     * A file before its pulls are given their places in the plan.
     *
     * @param sha256 the hash of its bytes before it was read
     * @param look what tells the meaning of its columns
     * @param pulls what tells its pulls
     */
    record Opened(String sha256, ExportFile look, ExportFile pulls) {
    }

    /** Looks at a file; where only its sweeps can tell how many pulls it holds, it is read. */
    Opened open(Path path) throws IOException {
        String sha256 = Sha256.of(path);
        ExportFile look = ExportFile.look(path, reading.decimalMark());
        if (reading.onePull() || !SweptFile.isForSweeps(look)) {
            return new Opened(sha256, look, look);
        }
        Mapping mapping = mapping(look.sample());
        return new Opened(sha256, look, SweptFile.parted(look.isWhole() ? look : ExportFile.read(path, mapping), mapping));
    }

    /** Checks a file; the values of its pulls come from all of its rows, however few tell what the columns are. */
    Result of(Path path, Opened opened, List<PullId> pulls) {
        ExportFile look = opened.look();
        boolean alone = reading.onePull() || SweptFile.isForSweeps(opened.pulls());
        if (look.table().columns().stream().anyMatch(column -> CurveTableWriter.isOnGrid(column.header()))) {
            throw new InputException(Place.of(path.toString()), "its curves were smoothed for a finding and would be smoothed again",
                    new Remedy("import the raw exports; curve-points.csv of the same folder is judged by judge --curves",
                    "take in the raw exports in its place"));
        }
        Mapping mapping = mapping(reading.onePull() ? look.table() : look.sample());
        ExportFile file = opened.pulls().isWhole() ? opened.pulls() : ExportFile.read(path, mapping);
        List<Pull> checked = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            Optional<Integer> number = alone ? Optional.empty() : Optional.of(i + 1);
            readAnew.checkBytes(path, pulls.get(i), opened.sha256());
            String name = path.getFileName() + number.map(one -> ", pull " + one + " in it").orElse("");
            Export export = alone ? file.table() : file.pull(i + 1);
            Optional<ReadPull> read = read(pulls.get(i), () -> look.isWhole()
                    ? ReadPull.remembered(opened.sha256(), mapping, number, () -> PullTraces.read(export, mapping))
                    : PullTraces.read(export, mapping));
            checked.add(pull(export, read, pulls.get(i), number, mapping, name));
        }
        return new Result(path, opened.sha256(), mapping, checked);
    }

    private Pull pull(Export export, Optional<ReadPull> read, PullId id, Optional<Integer> number, Mapping mapping, String name) {
        List<String> doubts = new ArrayList<>(export.doubts());
        MissingValues.rowsLeftOut(export, mapping).ifPresent(doubts::add);
        Map<Measure, Double> values = id.warmUp() ? Map.of() : values(export, read.orElseThrow().channels(), id, mapping, name, doubts);
        Optional<Looked> looked = read.map(known -> known.looked(id, !id.warmUp(), plan.question(), air.at(id)));
        looked.ifPresent(seen -> doubts.addAll(PullChecks.doubts(plan.question(), seen, surface)));
        int own = doubts.size();
        looked.map(Looked::pull).ifPresent(seen -> {
            SweepDoubts.of(plan, List.of(seen)).forEach(notice -> doubts.add(NoticeWords.sentence(notice, "", surface)));
            seen.factor().ifPresent(factor -> PullTraces.unpaired(ColumnGuess.guess(export).columns(), export, mapping)
                    .ifPresent(doubts::add));
        });
        return new Pull(id, number, values, doubts, own, looked);
    }

    /** A warm-up may be in an export that the mapping does not fit: nothing is read off it. */
    private static Optional<ReadPull> read(PullId id, Supplier<ReadPull> reading) {
        try {
            return Optional.of(reading.get());
        } catch (InputException doesNotFit) {
            if (id.warmUp()) {
                return Optional.empty();
            }
            throw doesNotFit;
        }
    }

    private Map<Measure, Double> values(Export export, Channels channels, PullId pull, Mapping mapping, String name, List<String> doubts) {
        List<Measure> measures = plan.question().measures();
        Map<Measure, Outcome> outcomes = PullValues.outcomes(channels, plan);
        PullValues.checkDeciding(outcomes, plan, name, Remedy.everywhere("leave it out, and note the pull as aborted"));
        measures.stream().filter(measure -> PulledAir.isNeeded(measure, mapping.corrected())).forEach(measure ->
                PulledAir.refuseWithoutFuel(Place.of(export.fileName()), pull, mapping.corrected().get(), measure.correction()));
        doubts.addAll(PullValues.doubts(outcomes));
        if (mapping.corrected().isEmpty() && measures.stream().anyMatch(PullValues::canBeCorrected)) {
            doubts.add(CORRECTION_UNKNOWN);
        }
        Map<String, Double> si = PullValues.of(outcomes);
        Map<Measure, Double> values = new LinkedHashMap<>();
        measures.stream().filter(measure -> si.containsKey(measure.name()))
                .forEach(measure -> values.put(measure, measure.unit().fromSi(si.get(measure.name()))));
        Optional.ofNullable(si.get(measures.get(0).name())).filter(plan.question()::isFarFromExpected)
                .ifPresent(far -> doubts.add(measures.get(0).name() + " is further than half the expected level from it"));
        return values;
    }

    /** What was typed now outranks what is remembered for this header, and that outranks the guess. */
    private Mapping mapping(Export export) {
        Optional<Mapping> remembered = remembered(content.mappings(), export);
        if (remembered.isPresent() && reading.columns().isEmpty()) {
            Mapping known = remembered.get();
            return known.withCorrected(reading.corrected().over(known.corrected()))
                    .withDecimalMark(reading.decimalMark());
        }
        return ColumnGuess.mapping(export, needed(), TypedColumns.choices(reading.columns()),
                readAnew.corrected(reading.corrected(), remembered))
                .withDecimalMark(reading.decimalMark());
    }

    /** {@return the mapping that was used last for a header} */
    static Optional<Mapping> remembered(List<Mapping> mappings, Export export) {
        return mappings.stream().filter(known -> known.fingerprint().equals(export.fingerprint())).reduce((first, last) -> last);
    }

    private Set<Quantity> needed() {
        Set<Quantity> needed = EnumSet.noneOf(Quantity.class);
        plan.question().measures().forEach(measure -> needed.addAll(measure.definition().channels()));
        if (!needed.isEmpty() && plan.scoredWindow().isPresent()) {
            needed.add(Quantity.FRACTION);
        }
        if (!needed.isEmpty() && plan.rig().movingMass().isPresent()) {
            needed.add(Quantity.SPEED);
        }
        if (needed.isEmpty()) {
            throw new InputException(Place.of("plan.json"), "every measure of this plan is typed by hand, none is read from exports",
                    new Remedy("type the values: fairpull note TEST B1-3 --value 13.42s",
                    "paste or type the values as a table on the page Pulls"));
        }
        return needed;
    }
}

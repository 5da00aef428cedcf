package fairpull.app.usecase.shelf;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.pulls.Evidence;
import fairpull.app.usecase.typing.MeasureText;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Fate;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.PullSeen;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import fairpull.domain.rig.Baseline;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.engine.rig.BaselineScatter;
import fairpull.engine.rig.RigSummary;
import fairpull.io.folder.Outputs;
import fairpull.io.folder.Sha256;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.RigJson;
import fairpull.io.record.RecordFolder;
import fairpull.io.table.BaselineReader;
import fairpull.report.wording.RigWords;
import fairpull.report.write.RigReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Keeps the rig record: takes baselines in, says what is known, writes it as a page. */
public final class RigRecords {
    /** A level this many times off the mean is in another unit or of another car. */
    private static final double MOST_OFF_LEVEL = 2;

    private RigRecords() {
    }

    /**
     * What is typed with a table; null where an option was not given.
     *
     * @param rig which rig
     * @param measure the measure, as {@link MeasureText} reads it
     * @param correction the standard that the values are brought to
     * @param bandwidth the bandwidth to which curves were smoothed
     * @param level the level that scatter is relative to
     * @param unstrapped whether a refit meant unstrapping
     */
    public record Key(String rig, String measure, Correction correction, String bandwidth, String level, boolean unstrapped) {
    }

    /** Adds the baselines of a plain table. */
    public static Answer addTable(Path table, Path records, Key typed, OffsetDateTime now) throws IOException {
        Measure measure = MeasureText.parse(typed.measure(), typed.correction());
        double levelSi = Typed.levelSi("--level", typed.level(), measure);
        OptionalDouble bandwidth = Typed.bandwidth("--bandwidth", typed.bandwidth());
        if (bandwidth.isPresent() && !measure.definition().isReadOffCurve()) {
            throw new UsageException("--bandwidth", "a measure that is not read off a curve over engine speed has none; leave it out");
        }
        RigKey key = key(typed.rig(), measure, bandwidth, typed.unstrapped());
        return add(new Source(table.getFileName().toString(), BaselineReader.read(table)), records, key, measure, levelSi, now);
    }

    /** Adds the A installs of a test, with measure, rig and straps as its plan has them. */
    public static Answer addTest(Path folder, Path records, String level, OffsetDateTime now) throws IOException {
        TestFolder test = TestFolder.open(folder);
        Evidence evidence = Evidence.of(test, test.read());
        Plan plan = evidence.plan();
        Measure measure = plan.question().deciding();
        OptionalDouble levelSi = level == null ? plan.question().expectedLevelSi()
                : OptionalDouble.of(Typed.levelSi("--level", level, measure));
        RigKey key = key(plan.rig().name(), measure, plan.bandwidthRadPerS(), unstrapped(plan));
        double given = levelSi.orElseThrow(() -> new UsageException("--level",
                "is missing, and the plan names no expected level; give the level that scatter is relative to"));
        return add(new Source(plan.title(), baseline(plan, evidence.pulls())), records, key, measure, given, now);
    }

    private record Source(String name, Baseline baseline) {
    }

    private static boolean unstrapped(Plan plan) {
        List<Boolean> kinds = plan.sequence().installs().filter(install -> install.part() == Part.A).map(Install::unstrapped).distinct()
                .toList();
        if (kinds.size() > 1) {
            throw new InputException(Place.of("plan.json"), "some installs of A were strapped down anew and some were not",
                    "these are different refits; put each kind in a table of its own and add that");
        }
        return kinds.get(0);
    }

    /**
     * {@return the record that the A installs of a judged test would make, as {@link #addTest} would add it; empty where they make none,
     * such as with a single pull or without an expected level}
     */
    static Optional<RigRecord> ofTest(Judgement judgement, OffsetDateTime now) {
        Plan plan = judgement.plan();
        Measure measure = plan.question().deciding();
        OptionalDouble level = plan.question().expectedLevelSi();
        if (level.isEmpty()) {
            return Optional.empty();
        }
        try {
            RigKey key = key(plan.rig().name(), measure, plan.bandwidthRadPerS(), unstrapped(plan));
            return Optional.of(record(new Source(plan.title(), baseline(plan, judgement.pulls())), key, measure, level.getAsDouble(), now));
        } catch (InputException | UsageException | IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    private static Baseline baseline(Plan plan, List<PullSeen> pulls) {
        List<Baseline.Session> sessions = new ArrayList<>();
        String measure = plan.question().deciding().name();
        int ofB = (int) used(pulls).filter(seen -> seen.pull().install().startsWith("B")).count();
        for (Session session : plan.sequence().sessions()) {
            List<Baseline.Install> installs = new ArrayList<>();
            for (Install install : session.installs()) {
                List<Double> values = used(pulls)
                        .filter(seen -> install.part() == Part.A && seen.pull().install().equals(install.label()))
                        .map(seen -> seen.values().get(measure)).toList();
                if (!values.isEmpty()) {
                    installs.add(new Baseline.Install(install.label(), values));
                }
            }
            if (!installs.isEmpty()) {
                sessions.add(new Baseline.Session(day(pulls, installs.get(0).label()).orElse(session.name()), installs));
            }
        }
        if (sessions.isEmpty()) {
            throw new InputException(Place.none(), "no pull of part A is used yet", "import its pulls first");
        }
        return new Baseline(sessions, ofB);
    }

    private static Stream<PullSeen> used(List<PullSeen> pulls) {
        return pulls.stream().filter(seen -> seen.fate() == Fate.USED);
    }

    private static Optional<String> day(List<PullSeen> pulls, String install) {
        return used(pulls).filter(seen -> seen.pull().install().equals(install)).flatMap(seen -> seen.startedAt().stream())
                .map(start -> start.toLocalDate().toString()).findFirst();
    }

    private static RigKey key(String rig, Measure measure, OptionalDouble bandwidthRadPerS, boolean unstrapped) {
        try {
            return RigKey.of(rig, measure, bandwidthRadPerS, unstrapped);
        } catch (IllegalArgumentException refused) {
            throw new UsageException("--name", refused.getMessage());
        }
    }

    private static Answer add(Source source, Path records, RigKey key, Measure measure, double levelSi, OffsetDateTime now)
            throws IOException {
        RigRecord record = record(source, key, measure, levelSi, now);
        RecordFolder folder = RecordFolder.openOrMake(records);
        Path file = folder.add(record);
        RigEvidence evidence = RigSummary.matching(key, folder.records()).orElseThrow();
        List<String> sentences = RigWords.added(record, source.baseline(), measure);
        List<String> lines = new ArrayList<>(List.of(RigWords.key(key)));
        sentences.forEach(sentence -> lines.add("- " + sentence));
        if (evidence.records().size() > 1) {
            lines.add("Together with what was there:");
            RigWords.evidence(evidence).forEach(sentence -> lines.add("- " + sentence));
        }
        lines.add("Wrote " + file + ". Plan with it: fairpull new … --record " + records);
        return new Answer(String.join("\n", lines), RigJson.added(file.toString(), record, evidence, sentences));
    }

    private static RigRecord record(Source source, RigKey key, Measure measure, double levelSi, OffsetDateTime now) {
        double level = measure.unit().fromSi(levelSi);
        if (!(levelSi > 0 && level > 0)) {
            throw new UsageException("--level", "must be above 0");
        }
        checkLevel(source, measure, level);
        try {
            BaselineScatter found = BaselineScatter.of(source.baseline(), level);
            return new RigRecord(key, source.name(), Sha256.of(source.baseline().sessions().toString()), now, levelSi, found.mean() / level,
                    found.scatter(), BaselineScatter.installMeans(source.baseline(), level));
        } catch (IllegalArgumentException notEstimable) {
            throw new InputException(Place.of(source.name()), notEstimable.getMessage(),
                    "a rig record needs at least two pulls that differ, with the digits that the rig gave");
        }
    }

    private static void checkLevel(Source source, Measure measure, double level) {
        double mean = source.baseline().sessions().stream().flatMap(session -> session.installs().stream())
                .flatMap(install -> install.values().stream()).mapToDouble(value -> value).average().orElseThrow();
        if (!(mean < MOST_OFF_LEVEL * level && mean > level / MOST_OFF_LEVEL)) {
            throw new InputException(Place.of(source.name()), "the mean of the values, " + (float) mean + " " + measure.unit().symbol()
                    + ", is not near the level " + (float) level + " " + measure.unit().symbol(),
                    "look whether the values are in the unit of --measure, and --level is that of this car");
        }
    }

    /** Says what a folder of records holds. */
    public static Answer show(Path records) throws IOException {
        List<RigEvidence> all = all(records);
        List<List<String>> sentences = all.stream().map(RigWords::evidence).toList();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < all.size(); i++) {
            text.append(i == 0 ? "" : "\n").append(RigWords.key(all.get(i).key())).append('\n');
            sentences.get(i).forEach(sentence -> text.append("- ").append(sentence).append('\n'));
        }
        return new Answer(text.toString(), RigJson.shown(all, sentences));
    }

    /** Writes what a folder of records holds as one HTML page. */
    public static Answer report(Path records, Path target, OffsetDateTime now) throws IOException {
        List<RigEvidence> all = all(records);
        if (Files.isDirectory(target) || target.toString().endsWith(".json")) {
            throw new UsageException("--out", target + " cannot be the page; name a file such as rig.html");
        }
        Outputs.write(target, RigReport.html(all, now));
        return new Answer("Wrote " + target, RigJson.written(target.toString(), all.size()));
    }

    static List<RigEvidence> all(Path records) throws IOException {
        List<RigEvidence> all = RigSummary.all(RecordFolder.open(records).records());
        if (all.isEmpty()) {
            throw new InputException(Place.of(records.toString()), "there is no rig record in it",
                    new Remedy("add baselines: fairpull rig add TABLE --records " + records,
                    "take another folder, or have repeated baselines made into a record"));
        }
        return all;
    }
}

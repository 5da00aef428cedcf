package fairpull.io.folder;

import fairpull.domain.InputException;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.Seal;
import fairpull.io.json.MappingJson;
import fairpull.io.json.PlanJson;
import fairpull.io.json.SealJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One test on disk: {@code plan.json}, {@code seal.json}, {@code log.jsonl}, {@code mapping.json} and the raw exports in {@code pulls}. */
public final class TestFolder {
    private static final long MOST_BYTES = 16L << 20;
    private static final int LONGEST_ENDING = 20;
    /** The amended plan, until the log names it. */
    private static final String NEXT_PLAN = "plan.next.json";
    private static final Set<String> OWN_NAMES = Set.of("plan.json", "seal.json", "log.jsonl", "mapping.json", "pulls",
            NEXT_PLAN);

    /** What {@link #keepExport} names an export: the pull, and the ending that the file had. */
    private static final Pattern EXPORT_NAME = Pattern.compile("[AB]\\d{1,3}-W?\\d{1,4}(_\\d{1,3})?(\\.\\w{0,20})?");

    private final Path folder;

    private TestFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * What a folder holds.
     *
     * @param plan the plan as it stands in the file
     * @param seal the seal, if there is one
     * @param log the log
     * @param logBrokenAt number of the first log entry that does not follow from the one before
     * @param logCutShort whether an unfinished line stands behind the last entry of the log
     * @param logHead the hash of the last line of the log, which stands for the whole of it
     * @param mappings how exports are read, one a header
     */
    public record Content(Plan plan, Optional<Seal> seal, DayLog log, Optional<Integer> logBrokenAt, boolean logCutShort, String logHead,
            List<Mapping> mappings) {
        /** {@return a short code that stands for the whole log} */
        public String logCode() {
            return SealCode.of(logHead);
        }

        /** {@return the same with another log, such as one in which something was taken back that is not written yet} */
        public Content with(DayLog other) {
            return new Content(plan, seal, other, logBrokenAt, logCutShort, logHead, mappings);
        }

        /** {@return the SHA-256 of the canonical plan as it stands} */
        public String planSha256() {
            return Sha256.of(PlanJson.canonical(plan));
        }

        /** {@return whether the log knows of a seal} */
        public boolean isSealed() {
            return log.planSha256().isPresent();
        }
    }

    /** {@return a test that is there} */
    public static TestFolder open(Path folder) {
        if (!Files.isRegularFile(folder.resolve("plan.json"))) {
            throw new InputException(InputException.Place.of(folder.toString()), "no plan.json in it: this is not a test",
                    new Remedy("give the folder of a test, or make one with `fairpull new`",
                    "open the folder of a test, or begin a new one from the menu Test"));
        }
        return new TestFolder(folder);
    }

    /** Makes a new test; nothing is written where there is one already. */
    public static TestFolder create(Path folder, Plan plan) throws IOException {
        if (Files.exists(StraightPath.of(folder).resolve("plan.json"))) {
            throw new InputException(InputException.Place.of(folder.toString()), "there is a test already", "choose another folder");
        }
        TestFolder test = new TestFolder(StraightPath.of(folder));
        NewFolders.with(test.folder, () -> test.writePlan(plan));
        return test;
    }

    /** {@return everything the folder holds but the raw exports} */
    public Content read() throws IOException {
        finishAmendment();
        Plan plan = readPlan(folder.resolve("plan.json"));
        Path sealFile = folder.resolve("seal.json");
        Optional<Seal> seal = Files.exists(sealFile)
                ? Optional.of(SealJson.read(Bounded.text(sealFile, MOST_BYTES), "seal.json"))
                : Optional.empty();
        LogFile.Content log = log().read();
        return new Content(plan, seal, new DayLog(log.records()), log.brokenAt(), log.cutShort(), log.head(), mappings());
    }

    /** {@return whether a file has a name that a test keeps for itself} */
    public static boolean isOwnName(Path file) {
        return OWN_NAMES.contains(file.getFileName().toString().toLowerCase(Locale.ROOT));
    }

    /** {@return the plan in a file} */
    public static Plan readPlan(Path file) throws IOException {
        return PlanJson.read(Bounded.text(file, MOST_BYTES), file.getFileName().toString());
    }

    /** {@return where it is} */
    public Path path() {
        return folder;
    }

    /**
     * {@return the raw export of that name}
     *
     * @throws InputException if the name is none that this program gives, such as one that leads out of the folder
     */
    public Path export(String name) {
        if (!EXPORT_NAME.matcher(name).matches()) {
            throw new InputException(InputException.Place.of("log.jsonl"), "“" + name + "” is not the name of an export",
                    "a test's exports lie in its folder pulls and are named by their pull, such as B1-3.csv");
        }
        return folder.resolve("pulls").resolve(name);
    }

    /** {@return the names of all files among the exports, in order} */
    public List<String> exportNames() throws IOException {
        Path pulls = folder.resolve("pulls");
        if (!Files.isDirectory(pulls)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(pulls)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Seals the plan: writes the seal and names it in the log. */
    public Seal seal(Plan plan, OffsetDateTime at, String programVersion) throws IOException {
        String hash = Sha256.of(PlanJson.canonical(plan));
        Optional<Scatter> pull = plan.rig().pullScatter().filter(Scatter::isRecord);
        Optional<Scatter> refit = plan.rig().refitScatter().filter(Scatter::isRecord);
        Seal seal = new Seal(hash, SealCode.of(hash), at, programVersion, pull, refit);
        AtomicWrite.text(folder.resolve("seal.json"), SealJson.indented(seal),
                () -> append(at, List.of(new LogEntry.Sealed(hash, seal.code(), sha256(seal)))));
        return seal;
    }

    /** Replaces the plan by an amended one and logs why. */
    public LogEntry.Amended amend(Plan before, Plan after, String reason, OffsetDateTime at) throws IOException {
        LogEntry.Amended amended = new LogEntry.Amended(reason, PlanJson.changes(before, after),
                Sha256.of(PlanJson.canonical(before)), Sha256.of(PlanJson.canonical(after)));
        return Turn.in(folder, () -> {
            Path next = folder.resolve(NEXT_PLAN);
            try {
                AtomicWrite.text(next, PlanJson.indented(after), () -> append(at, List.of(amended)));
            } catch (IOException trouble) {
                throw DiskTrouble.of(folder.resolve("plan.json"), next, trouble);
            }
            finishAmendment();
            return amended;
        });
    }

    /** Puts the amended plan in place once the log names it; after a kill between both, whoever reads the test next does. */
    private void finishAmendment() throws IOException {
        Path next = folder.resolve(NEXT_PLAN);
        if (!Files.exists(next)) {
            return;
        }
        Turn.in(folder, () -> {
            Optional<String> expected = new DayLog(log().read().records()).planSha256();
            boolean waits = Files.exists(next) && isPlan(next, expected) && !isPlan(folder.resolve("plan.json"), expected);
            if (waits) {
                Files.move(next, folder.resolve("plan.json"), StandardCopyOption.ATOMIC_MOVE);
            }
            return waits;
        });
    }

    private static boolean isPlan(Path file, Optional<String> sha256) throws IOException {
        return sha256.isPresent() && sha256.get().equals(Sha256.of(PlanJson.canonical(readPlan(file))));
    }

    /** Writes the plan of a test that is not sealed. */
    public void writePlan(Plan plan) throws IOException {
        AtomicWrite.text(folder.resolve("plan.json"), PlanJson.indented(plan));
    }

    /** Adds the entries of one act to the log: all of them or none. */
    public void append(OffsetDateTime at, List<LogEntry> entries) throws IOException {
        log().append(at, entries);
    }

    /**
     * Takes exports in while nothing else is written: has their files kept, remembers how they are read, and adds entries to the log.
     * Where any of that fails, no file stays.
     *
     * @param read the test as it was read when the exports were looked at
     * @param keeping keeps the files, and names those that it kept
     * @param used how they are read
     * @param entries made of the names that were kept
     * @throws InputException if something was written into the log since; nothing is taken then
     */
    public void take(OffsetDateTime at, Content read, Keeping keeping, List<Mapping> used,
            Function<List<String>, List<LogEntry>> entries) throws IOException {
        Turn.in(folder, () -> {
            NewFolders.with(folder.resolve("pulls"), () -> {
                List<String> names = keeping.keep();
                try {
                    remember(used, () -> log().append(at, entries.apply(names), Optional.of(read.logHead())));
                } catch (IOException | RuntimeException failed) {
                    dropExports(names.stream().filter(name -> !name.isEmpty()).toList());
                    throw failed;
                }
            });
            return true;
        });
    }

    /** Keeps files. */
    public interface Keeping {
        /** {@return the names that they have now, empty where one was there already} */
        List<String> keep() throws IOException;
    }

    /**
     * Copies an export into the test byte for byte, under the pull's name; returns the name it has there.
     *
     * @param takenBack names of exports of pulls that were taken back: they stay as they came; the same bytes are not copied again, others
     *     get a name with a number
     * @throws InputException if its bytes are not those of the SHA-256 that it was checked with; nothing is kept then
     */
    public String keepExport(Path source, String pull, String sha256, List<String> takenBack) throws IOException {
        String original = source.getFileName().toString();
        int dot = original.lastIndexOf('.');
        String ending = dot > 0 ? original.substring(dot + 1).replaceAll("\\W", "") : "";
        String behind = ending.isEmpty() || ending.length() > LONGEST_ENDING ? "" : "." + ending;
        String name = pull + behind;
        for (int copy = 2; takenBack.contains(name) || isAnother(export(name), source); copy++) {
            if (Files.exists(export(name)) && Sha256.of(export(name)).equals(sha256)) {
                return name;
            }
            name = pull + "_" + copy + behind;
        }
        Path target = export(name);
        if (!Files.exists(target)) {
            AtomicWrite.copy(source, target, sha256);
        }
        return name;
    }

    private static boolean isAnother(Path target, Path source) throws IOException {
        return Files.exists(target) && !Files.isSameFile(source, target);
    }

    /** Lets go of exports that were kept and did not come into the log after all. What the log ever named stays, whoever asks. */
    public void dropExports(List<String> names) throws IOException {
        List<String> logged = new DayLog(log().read().records()).filesNamed();
        for (String name : names) {
            if (!logged.contains(name)) {
                Files.deleteIfExists(export(name));
            }
        }
    }

    /** Remembers how exports with some headers are read. Earlier mappings stay: pulls taken with them are still read by them. */
    public void remember(List<Mapping> used) throws IOException {
        remember(used, () -> { });
    }

    private void remember(List<Mapping> used, AtomicWrite.Work then) throws IOException {
        List<Mapping> before = mappings();
        List<Mapping> all = new ArrayList<>(before);
        all.removeAll(used);
        all.addAll(used);
        if (all.equals(before)) {
            then.run();
        } else {
            AtomicWrite.text(folder.resolve("mapping.json"), MappingJson.indented(all), then);
        }
    }

    /** {@return the hash by which a seal is named in the log} */
    public static String sha256(Seal seal) {
        return Sha256.of(SealJson.canonical(seal));
    }

    /** {@return the hash by which a mapping is named in the log} */
    public static String sha256(Mapping mapping) {
        return Sha256.of(MappingJson.canonical(mapping));
    }

    private List<Mapping> mappings() throws IOException {
        Path file = folder.resolve("mapping.json");
        return Files.exists(file) ? MappingJson.read(Bounded.text(file, MOST_BYTES), "mapping.json") : List.of();
    }

    private LogFile log() {
        return new LogFile(folder.resolve("log.jsonl"));
    }
}

package fairpull.app.usecase.pulls;

import fairpull.app.task.Progress;
import fairpull.app.usecase.Receipt;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * Files that somebody has put before a test, with the pulls that they are taken for and what each would read. Nothing is taken yet.
 *
 * @param files in the order in which they were written, as far as their time stamps tell
 * @param free the pulls of the plan that have not come in, in its order: whatever else a file may be taken for
 * @param prepared the import that takes them
 */
public record IncomingPulls(List<Incoming> files, List<PullId> free, PreparedImport prepared) {
    /**
     * One file.
     *
     * @param path the file
     * @param place the first pull that it is taken for; empty where none is left
     * @param pulls what each of its pulls would read, in a phrase
     * @param doubts what is not certain, one sentence each
     * @param problem why it cannot be taken; empty where it can
     */
    public record Incoming(Path path, Optional<PullId> place, List<String> pulls, List<String> doubts, Optional<String> problem) {
        public Incoming {
            pulls = List.copyOf(pulls);
            doubts = List.copyOf(doubts);
        }
    }

    public IncomingPulls {
        files = List.copyOf(files);
        free = List.copyOf(free);
        Objects.requireNonNull(prepared, "prepared");
    }

    /**
     * Reads files for a test.
     *
     * @param chosen the pulls for which files were chosen by hand; the others are told by their names, and else by the order of the plan
     */
    public static IncomingPulls of(Path folder, List<Path> files, Map<Path, PullId> chosen, ImportPulls.Reading reading,
            Progress progress) throws IOException {
        TestFolder.Content content = TestFolder.open(folder).read();
        List<Path> ordered = ordered(files);
        List<PullId> free = free(content.plan(), content.log());
        Map<Path, PullId> places = places(ordered, chosen, free);
        PreparedImport prepared = ImportPulls.prepare(new ImportPulls.Request(folder, ordered, Optional.empty(), OptionalInt.empty(),
                false, reading, Optional.empty(), places), Surface.WINDOW, progress);
        List<Incoming> incoming = prepared.files().stream().map(file -> incoming(file, places)).toList();
        return new IncomingPulls(incoming, free, prepared);
    }

    private static Incoming incoming(PreparedImport.FileChecked file, Map<Path, PullId> places) {
        List<String> doubts = file.pulls().stream().flatMap(pull -> pull.doubts().stream()
                .map(doubt -> file.pulls().size() > 1 ? pull.pull() + ": " + doubt : doubt)).toList();
        Optional<PullId> place = file.pulls().stream().map(ImportPulls.Taken::pull).findFirst()
                .or(() -> Optional.ofNullable(places.get(file.path())));
        return new Incoming(file.path(), place, file.pulls().stream().map(IncomingPulls::words).toList(), doubts, file.problem());
    }

    private static String words(ImportPulls.Taken taken) {
        String values = taken.values().entrySet().stream().map(value -> figure(value.getKey(), value.getValue()))
                .collect(Collectors.joining(", "));
        return taken.pull() + (taken.pull().warmUp() ? ": warm-up" : ": " + values);
    }

    private static String figure(Measure measure, double value) {
        return measure.name() + " " + Receipt.figure(measure, value);
    }

    /** The clock of the files first, then their names, numbers in them by their size. */
    private static List<Path> ordered(List<Path> files) throws IOException {
        Map<Path, FileTime> written = new HashMap<>();
        for (Path file : files) {
            written.put(file, Files.exists(file) ? Files.getLastModifiedTime(file) : FileTime.fromMillis(0));
        }
        return files.stream().distinct().sorted(Comparator.comparing((Path file) -> written.get(file).toMillis() / 1000)
                .thenComparing(IncomingPulls::byNumbers)).toList();
    }

    private static String byNumbers(Path file) {
        StringBuilder key = new StringBuilder();
        for (String part : file.getFileName().toString().split("(?<=\\d)(?=\\D)|(?<=\\D)(?=\\d)")) {
            boolean number = !part.isEmpty() && Character.isDigit(part.charAt(0));
            key.append(number ? "0".repeat(Math.max(0, 12 - part.length())) + part : part);
        }
        return key.toString();
    }

    private static List<PullId> free(Plan plan, DayLog log) {
        return PlannedClock.of(plan.sequence()).minutes().keySet().stream()
                .filter(pull -> !log.pulls().containsKey(pull) && !log.aborted().containsKey(pull)).toList();
    }

    /** Names tell the pulls of some files; what is left goes to counted pulls in the order of the plan, none twice. */
    private static Map<Path, PullId> places(List<Path> files, Map<Path, PullId> chosen, List<PullId> free) {
        Map<Path, PullId> places = new HashMap<>(chosen);
        places.keySet().retainAll(files);
        files.forEach(file -> Assignment.byName(file).ifPresent(pull -> places.putIfAbsent(file, pull)));
        List<PullId> left = new ArrayList<>(free);
        left.removeIf(pull -> pull.warmUp() || places.containsValue(pull));
        for (Path file : files) {
            if (!places.containsKey(file) && !left.isEmpty()) {
                places.put(file, left.remove(0));
            }
        }
        return places;
    }
}

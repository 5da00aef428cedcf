package fairpull.app.usecase.shelf;

import fairpull.app.task.CancelledException;
import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.io.record.RecordFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lists the tests below a folder, and where rig records lie in it. Nothing outside the folder is looked at: links are not followed. A test
 * that was listed before is judged again only when one of its files has another size or time.
 */
public final class ListTests {
    /** So many folders within each other are looked at. */
    public static final int DEEPEST = 8;
    /** So many tests are listed. */
    public static final int MOST_TESTS = 2_000;
    private static final int MOST_LOOKED_AT = 100_000;
    private static final int MOST_FILES = 10_000;

    private final Map<Path, Kept> kept = Collections.synchronizedMap(new HashMap<>());

    private record Kept(String stamp, ListedTest test) {
    }

    /**
     * What lies below a folder.
     *
     * @param tests folders of tests, by name
     * @param records folders of rig records, by name
     * @param isCut whether there is more than is looked at
     */
    public record Found(List<Path> tests, List<Path> records, boolean isCut) {
        public Found {
            tests = List.copyOf(tests);
            records = List.copyOf(records);
        }
    }

    /** {@return the tests and rig records below a folder} */
    public static Found find(Path folder, Progress progress) throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new InputException(Place.of(folder.toString()), "there is no such folder", "choose another one");
        }
        Walk walk = new Walk(folder, progress);
        Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), DEEPEST + 1, walk);
        if (progress.isCancelled()) {
            throw new CancelledException(0, 1);
        }
        return new Found(walk.tests.stream().sorted().toList(), walk.records.stream().sorted().toList(), walk.isCut);
    }

    /** Judges the tests that were found, several at a time, and tells of each as soon as it is; from whichever thread did it. */
    public void list(Found found, Consumer<ListedTest> told, Progress progress) {
        kept.keySet().retainAll(Set.copyOf(found.tests()));
        Chunks.run(found.tests().size(), place -> {
            told.accept(listed(found.tests().get(place)));
            return true;
        }, Chunks.cores(), progress);
    }

    private ListedTest listed(Path folder) {
        String stamp = stamp(folder);
        Kept before = kept.get(folder);
        if (before != null && !stamp.isEmpty() && before.stamp().equals(stamp)) {
            return before.test();
        }
        ListedTest test = ListedTest.of(folder);
        kept.put(folder, new Kept(stamp, test));
        return test;
    }

    /** Names, sizes and times of all files of a test; empty where they cannot be told, or are too many. */
    private static String stamp(Path folder) {
        try (Stream<Path> files = Files.walk(folder, 2)) {
            List<Path> some = files.limit(MOST_FILES + 1L).toList();
            return some.size() > MOST_FILES ? "" : some.stream().sorted().map(Path::toFile)
                    .map(file -> file + " " + file.length() + " " + file.lastModified()).collect(Collectors.joining("\n"));
        } catch (IOException | UncheckedIOException unreadable) {
            return "";
        }
    }

    private static final class Walk extends SimpleFileVisitor<Path> {
        private final Path start;
        private final Progress progress;
        private final List<Path> tests = new ArrayList<>();
        private final Set<Path> records = new LinkedHashSet<>();
        private int lookedAt;
        private boolean isCut;

        Walk(Path start, Progress progress) {
            this.start = start;
            this.progress = progress;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes facts) {
            if (isEnough()) {
                return FileVisitResult.TERMINATE;
            }
            if (!folder.equals(start) && folder.getFileName().toString().startsWith(".")) {
                return FileVisitResult.SKIP_SUBTREE;
            }
            if (Files.exists(folder.resolve("plan.json"))) {
                tests.add(folder);
                return FileVisitResult.SKIP_SUBTREE;
            }
            return FileVisitResult.CONTINUE;
        }

        /** A folder that lies too deep to be gone into comes here as well. */
        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
            if (isEnough()) {
                return FileVisitResult.TERMINATE;
            }
            isCut |= facts.isDirectory();
            if (facts.isRegularFile() && RecordFolder.isRecord(file)) {
                records.add(file.getParent());
            }
            return FileVisitResult.CONTINUE;
        }

        private boolean isEnough() {
            boolean enough = ++lookedAt > MOST_LOOKED_AT || tests.size() >= MOST_TESTS;
            isCut |= enough;
            return enough || progress.isCancelled();
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException unreadable) {
            return FileVisitResult.CONTINUE;
        }
    }
}

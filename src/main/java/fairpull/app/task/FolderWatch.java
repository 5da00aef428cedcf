package fairpull.app.task;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Finds the files that become complete in a folder, by looking at it again and again: notices of a file system do not come from every
 * network drive. A file is complete when neither its size nor its time has changed from one look to the next and it can be opened.
 */
public final class FolderWatch {
    private static final List<String> UNFINISHED = List.of(".tmp", ".part", ".partial", ".crdownload", "~");
    /** A folder with more files than this is none that a rig exports to. */
    private static final int MOST_FILES = 10_000;

    private final Path folder;
    private final Map<Path, Seen> before = new HashMap<>();
    private final Map<Path, Seen> settled = new HashMap<>();

    /** A copy keeps the time of its original on some systems, but is made anew. */
    private record Seen(long size, FileTime changed, FileTime made) {
        Instant came() {
            return (changed.compareTo(made) > 0 ? changed : made).toInstant();
        }
    }

    private int already;

    private FolderWatch(Path folder) {
        this.folder = folder;
    }

    /** {@return a watch of a folder; what is in it already is not new} */
    public static FolderWatch of(Path folder) throws IOException {
        FolderWatch watch = new FolderWatch(folder);
        watch.settled.putAll(watch.look());
        watch.already = watch.settled.size();
        return watch;
    }

    /** {@return when the newest file came that was there at the start, by the clock of the folder; the farthest past where none was} */
    public Instant newest() {
        return settled.values().stream().map(Seen::came).max(Instant::compareTo).orElse(Instant.EPOCH);
    }

    /**
     * {@return a watch that goes on after an interruption: what came after the {@link #newest} of its first start and is not known is new}
     */
    public static FolderWatch resumed(Path folder, Instant since, Predicate<Path> known) throws IOException {
        FolderWatch watch = new FolderWatch(folder);
        watch.look().forEach((file, seen) -> {
            boolean before = !seen.came().isAfter(since);
            watch.already += before ? 1 : 0;
            if (before || known.test(file)) {
                watch.settled.put(file, seen);
            }
        });
        return watch;
    }

    /** {@return where it looks} */
    public Path folder() {
        return folder;
    }

    /** {@return how many files were there before} */
    public int already() {
        return already;
    }

    /**
     * Looks again.
     *
     * @return the files that became complete since the last look, the oldest first
     * @throws IOException if the folder cannot be read; the next look may find it again
     */
    public synchronized List<Path> poll() throws IOException {
        Map<Path, Seen> now = look();
        List<Path> complete = new ArrayList<>();
        now.forEach((file, seen) -> {
            boolean isNew = !seen.equals(settled.get(file));
            if (isNew && seen.equals(before.get(file)) && seen.size() > 0 && canBeRead(file)) {
                settled.put(file, seen);
                complete.add(file);
            }
        });
        before.clear();
        before.putAll(now);
        complete.sort(Comparator.comparing((Path file) -> now.get(file).changed()).thenComparing(Path::toString));
        return complete;
    }

    private Map<Path, Seen> look() throws IOException {
        Map<Path, Seen> seen = new HashMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.limit(MOST_FILES).filter(FolderWatch::isWanted).toList()) {
                try {
                    BasicFileAttributes facts = Files.readAttributes(file, BasicFileAttributes.class);
                    if (facts.isRegularFile()) {
                        seen.put(file, new Seen(facts.size(), facts.lastModifiedTime(), facts.creationTime()));
                    }
                } catch (IOException goneMeanwhile) {
                    continue;
                }
            }
        }
        return seen;
    }

    private static boolean isWanted(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && UNFINISHED.stream().noneMatch(name::endsWith);
    }

    private static boolean canBeRead(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.read() >= 0;
        } catch (IOException stillLocked) {
            return false;
        }
    }
}

package fairpull.io.settings;

import fairpull.io.folder.AtomicWrite;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The folder of the program's user: settings, and a recovery file for every window with edits that were never saved. A file that cannot
 * be read any more is as good as none; it is never a reason not to start.
 */
public final class UserFolder {
    private static final String SETTINGS = "settings.properties";
    private static final String RECOVERY = "recovery";
    private static final String WHERE = ".where";
    private static final String HELD = "held";
    private static final long MOST_BYTES = 16L << 20;
    /** Two readings of when a process started differ by as much as the clock was set in between. */
    private static final long CLOCKS_AGREE_MS = 10_000;

    private final Path folder;

    /** A folder that is made when something is first written to it. */
    public UserFolder(Path folder) {
        this.folder = folder;
    }

    /** {@return the folder that the system has for such files; the property {@code fairpull.home} names another} */
    public static UserFolder ofSystem() {
        String asked = System.getProperty("fairpull.home");
        return new UserFolder(asked != null ? Path.of(asked) : usual());
    }

    private static Path usual() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        if (system.contains("win")) {
            return Optional.ofNullable(System.getenv("APPDATA")).map(Path::of).orElse(home).resolve("Fairpull");
        }
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Fairpull");
        }
        return Optional.ofNullable(System.getenv("XDG_STATE_HOME")).filter(state -> !state.isBlank()).map(Path::of)
                .orElse(home.resolve(".local").resolve("state")).resolve("fairpull");
    }

    /** {@return what was remembered, by name; nothing where nothing can be read} */
    public Map<String, String> settings() {
        Map<String, String> settings = new TreeMap<>();
        try {
            Path file = folder.resolve(SETTINGS);
            if (Files.exists(file) && Files.size(file) <= MOST_BYTES) {
                Properties properties = new Properties();
                properties.load(new StringReader(Files.readString(file)));
                properties.stringPropertyNames().forEach(name -> settings.put(name, properties.getProperty(name)));
            }
        } catch (IOException | IllegalArgumentException unreadable) {
            settings.clear();
        }
        return settings;
    }

    /** Remembers settings in place of all earlier ones. */
    public void remember(Map<String, String> settings) throws IOException {
        Files.createDirectories(folder);
        StringBuilder text = new StringBuilder();
        new TreeMap<>(settings).forEach((name, value) -> text.append(escaped(name)).append('=').append(escaped(value)).append('\n'));
        AtomicWrite.text(folder.resolve(SETTINGS), text.toString());
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r").replace("=", "\\=").replace(":", "\\:")
                .replace(" ", "\\ ").replace("#", "\\#").replace("!", "\\!");
    }

    /** What windows keep, each in recovery files of its own ending. */
    public enum Kind {
        /** The plan of a test. */
        PLAN(".json"),
        /** A published comparison while it is typed. */
        PUBLICATION(".publication");

        private final String ending;

        Kind(String ending) {
            this.ending = ending;
        }
    }

    /**
     * Edits that were never saved.
     *
     * @param id of the recovery file
     * @param where what is edited is kept, a folder or a file; empty where it is nowhere yet
     * @param text as it was last seen
     */
    public record Recovered(String id, Optional<Path> where, String text) {
    }

    /** Keeps edits in the recovery file of a window. */
    public void keep(Kind kind, Recovered edits) throws IOException {
        Path kept = folder.resolve(RECOVERY);
        Files.createDirectories(kept);
        AtomicWrite.text(kept.resolve(edits.id() + WHERE), edits.where().map(path -> path.toAbsolutePath().toString()).orElse(""));
        AtomicWrite.text(kept.resolve(edits.id() + kind.ending), edits.text());
    }

    /** Forgets the recovery file of a window. */
    public void forget(String id) throws IOException {
        for (Kind kind : Kind.values()) {
            Files.deleteIfExists(folder.resolve(RECOVERY).resolve(id + kind.ending));
        }
        Files.deleteIfExists(folder.resolve(RECOVERY).resolve(id + WHERE));
    }

    /** {@return a new folder for files that belong to something that lies in no file yet} */
    public Path hold() throws IOException {
        return Files.createTempDirectory(Files.createDirectories(folder.resolve(HELD)), "");
    }

    /** {@return whether a folder is one that was made to hold files} */
    public boolean isHeld(Path held) {
        return held.toAbsolutePath().normalize().getParent().equals(folder.resolve(HELD).toAbsolutePath().normalize())
                && Files.isDirectory(held, LinkOption.NOFOLLOW_LINKS);
    }

    /** Deletes a folder that was made to hold files, and them. */
    public void letGo(Path held) throws IOException {
        if (!isHeld(held)) {
            throw new IllegalArgumentException(held + " was not made to hold files");
        }
        try (Stream<Path> files = Files.list(held)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(held);
    }

    /** {@return the edits of a kind that were never saved, of windows that are not alive any more} */
    public List<Recovered> recoverable(Kind kind) throws IOException {
        Path kept = folder.resolve(RECOVERY);
        List<Recovered> found = new ArrayList<>();
        if (!Files.isDirectory(kept)) {
            return found;
        }
        try (Stream<Path> files = Files.list(kept)) {
            for (Path file : files.filter(file -> file.getFileName().toString().endsWith(kind.ending)).sorted().toList()) {
                read(file, kind).filter(recovered -> !isAlive(recovered.id())).ifPresent(found::add);
            }
        }
        return found;
    }

    private static Optional<Recovered> read(Path file, Kind kind) {
        String name = file.getFileName().toString();
        String id = name.substring(0, name.length() - kind.ending.length());
        try {
            if (Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            Path where = file.resolveSibling(id + WHERE);
            String path = Files.exists(where) ? Files.readString(where).strip() : "";
            return Optional.of(new Recovered(id, path.isEmpty() ? Optional.empty() : Optional.of(Path.of(path)), Files.readString(file)));
        } catch (IOException | IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** {@return a name for the recovery file of a window of this process: the process, when it started, the window} */
    public static String id(int window) {
        return id(ProcessHandle.current(), 0) + "-" + window;
    }

    static String id(ProcessHandle process, long laterMs) {
        return process.pid() + "-" + (startedMs(process) + laterMs);
    }

    private static long startedMs(ProcessHandle process) {
        return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    }

    /** A number of a process is given anew after a restart, so the time at which the process started must agree as well. */
    private static boolean isAlive(String id) {
        try {
            String[] parts = id.split("-");
            long pid = Long.parseLong(parts[0]);
            long started = Long.parseLong(parts[1]);
            return pid != ProcessHandle.current().pid() && ProcessHandle.of(pid).filter(ProcessHandle::isAlive)
                    .map(UserFolder::startedMs).filter(now -> Math.abs(now - started) <= CLOCKS_AGREE_MS).isPresent();
        } catch (NumberFormatException | IndexOutOfBoundsException noProcess) {
            return false;
        }
    }
}

package fairpull.app.document;

import fairpull.app.task.Keeper;
import fairpull.domain.search.Costs;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.settings.SystemTheme;
import fairpull.io.settings.UserFolder;
import java.nio.file.InvalidPathException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;

/**
 * What the window remembers: theme, units, sizes, recent tests. Shared by all windows of a process, each of which has a hold of its own on
 * it; on the thread of the window only.
 */
public final class Settings {
    private static final int MOST_RECENT = 10;
    private static final String RECENT = "recent.";

    private static final long PAUSE_MS = 500;

    private final Shared shared;
    private final List<Runnable> listeners = new ArrayList<>();

    /** What all holds on the settings have in common. */
    private static final class Shared {
        private final UserFolder folder;
        private final Map<String, String> values;
        private final List<Settings> holds = new ArrayList<>();
        private Runnable keeping = () -> { };

        Shared(UserFolder folder) {
            this.folder = folder;
            values = new TreeMap<>(folder.settings());
        }

        void tell() {
            keeping.run();
            List.copyOf(holds).forEach(hold -> List.copyOf(hold.listeners).forEach(Runnable::run));
        }
    }

    private Settings(Shared shared) {
        this.shared = shared;
        shared.holds.add(this);
    }

    /** {@return the settings kept in a folder, which is made when something is first remembered} */
    public static Settings in(Path folder) {
        return new Settings(new Shared(new UserFolder(folder)));
    }

    /** {@return the settings kept where the system keeps such files} */
    public static Settings ofSystem() {
        return new Settings(new Shared(UserFolder.ofSystem()));
    }

    /** {@return the same settings, for who comes and goes: listens on its own until it ends} */
    public Settings ofOne() {
        return new Settings(shared);
    }

    /** Lets go of everyone who listens here. */
    public void end() {
        listeners.clear();
        shared.holds.remove(this);
    }

    /** Writes everything down a moment after each change from now on, beside the thread of the window. */
    public void keep(Executor window) {
        Keeper keeper = new Keeper(PAUSE_MS, window);
        shared.keeping = () -> {
            Map<String, String> now = Map.copyOf(shared.values);
            keeper.ask(() -> shared.folder.remember(now), () -> { }, forgotten -> {
                // sizes and recent tests are a comfort; nothing of the user's work is lost with them
            });
        };
    }

    /** {@return a new folder in that of the user, for the files of a publication that lies in none yet} */
    public Path hold() throws IOException {
        return folder().hold();
    }

    /** Deletes such a folder and what is in it. */
    public void letGo(Path held) throws IOException {
        folder().letGo(held);
    }

    UserFolder folder() {
        return shared.folder;
    }

    /** {@return the units in which temperatures, pressures and new tests are read; US customary where the locale says so} */
    public UnitSystem units() {
        UnitSystem usual = Locale.getDefault().getCountry().equals("US") ? UnitSystem.US : UnitSystem.METRIC;
        return Arrays.stream(UnitSystem.values()).filter(system -> find("units").filter(system.name()::equals).isPresent()).findFirst()
                .orElse(usual);
    }

    /** Reads in other units from now on. */
    public void units(UnitSystem system) {
        set("units", system.name());
    }

    /** {@return what things cost in this shop; nothing where that was never said} */
    public Costs costs() {
        return new Costs(notNegative("hour"), notNegative("pull"), notNegative("swap"), notNegative("setUp"));
    }

    private double notNegative(String name) {
        double cost = number("cost." + name, 0);
        return cost >= 0 && Double.isFinite(cost) ? cost : 0;
    }

    /** Reckons with other costs from now on: {@code hour}, {@code pull}, {@code swap} or {@code setUp}. */
    public void cost(String name, double cost) {
        set("cost." + name, Double.toString(cost));
    }

    /** {@return whether the system's own windows are dark; asks the system, so not to be called on the thread of a window} */
    public static Optional<Boolean> systemIsDark() {
        return SystemTheme.isDark();
    }

    /** {@return a setting by name} */
    public Optional<String> find(String name) {
        return Optional.ofNullable(shared.values.get(name));
    }

    /** {@return a number by name} */
    public double number(String name, double otherwise) {
        try {
            return find(name).map(Double::parseDouble).orElse(otherwise);
        } catch (NumberFormatException unreadable) {
            return otherwise;
        }
    }

    /** Sets a value and tells whoever listens. */
    public void set(String name, String value) {
        if (!value.equals(shared.values.put(name, value))) {
            shared.tell();
        }
    }

    /** {@return the tests that were open last, the latest first; what is no path is passed over} */
    public List<Path> recent() {
        List<Path> recent = new ArrayList<>();
        for (int place = 0; place < MOST_RECENT; place++) {
            find(RECENT + place).flatMap(Settings::path).ifPresent(recent::add);
        }
        return recent;
    }

    private static Optional<Path> path(String text) {
        try {
            return Optional.of(Path.of(text));
        } catch (InvalidPathException unreadable) {
            return Optional.empty();
        }
    }

    /** Puts a test at the head of the recent ones. */
    public void opened(Path test) {
        List<Path> recent = new ArrayList<>(recent());
        Path absolute = test.toAbsolutePath().normalize();
        recent.remove(absolute);
        recent.add(0, absolute);
        for (int place = 0; place < Math.min(MOST_RECENT, recent.size()); place++) {
            shared.values.put(RECENT + place, recent.get(place).toString());
        }
        shared.tell();
    }

    /** Has {@code listener} called after every change, until this hold ends. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** {@return how many listen, through whichever hold} */
    public int listeners() {
        return shared.holds.stream().mapToInt(hold -> hold.listeners.size()).sum();
    }
}

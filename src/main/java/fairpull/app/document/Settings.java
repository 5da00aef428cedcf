package fairpull.app.document;

import fairpull.domain.search.Costs;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.settings.SystemTheme;
import fairpull.io.settings.UserFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the window remembers: theme, units, sizes, recent tests. Shared by all windows of a process; on the thread of the window only. */
public final class Settings {
    private static final int MOST_RECENT = 10;
    private static final String RECENT = "recent.";

    private final UserFolder folder;
    private final Map<String, String> values;
    private final List<Runnable> listeners = new ArrayList<>();

    private Settings(UserFolder folder) {
        this.folder = folder;
        this.values = new TreeMap<>(folder.settings());
    }

    /** {@return the settings kept in a folder, which is made when something is first remembered} */
    public static Settings in(Path folder) {
        return new Settings(new UserFolder(folder));
    }

    /** {@return the settings kept where the system keeps such files} */
    public static Settings ofSystem() {
        return new Settings(UserFolder.ofSystem());
    }

    UserFolder folder() {
        return folder;
    }

    /** {@return the units in which temperatures, pressures and new tests are read; US customary where the locale says so} */
    public UnitSystem units() {
        boolean us = Locale.getDefault().getCountry().equals("US");
        return find("units").map(UnitSystem::valueOf).orElse(us ? UnitSystem.US : UnitSystem.METRIC);
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
        return Optional.ofNullable(values.get(name));
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
        if (!value.equals(values.put(name, value))) {
            List.copyOf(listeners).forEach(Runnable::run);
        }
    }

    /** {@return the tests that were open last, the latest first} */
    public List<Path> recent() {
        List<Path> recent = new ArrayList<>();
        for (int place = 0; place < MOST_RECENT; place++) {
            find(RECENT + place).map(Path::of).ifPresent(recent::add);
        }
        return recent;
    }

    /** Puts a test at the head of the recent ones. */
    public void opened(Path test) {
        List<Path> recent = new ArrayList<>(recent());
        Path absolute = test.toAbsolutePath().normalize();
        recent.remove(absolute);
        recent.add(0, absolute);
        for (int place = 0; place < Math.min(MOST_RECENT, recent.size()); place++) {
            values.put(RECENT + place, recent.get(place).toString());
        }
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Has {@code listener} called after every change. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Writes everything down. */
    public void remember() throws IOException {
        folder.remember(values);
    }
}

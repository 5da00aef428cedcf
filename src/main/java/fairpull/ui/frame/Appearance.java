package fairpull.ui.frame;

import com.formdev.flatlaf.FlatLaf;
import fairpull.app.document.Settings;
import fairpull.app.task.Job;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Light, dark or as the system has it, and how large the type is; remembered, and changed in all windows at once. */
public final class Appearance {
    private static final double STEP = 1.15;
    private static final double LEAST = 0.7;
    private static final double MOST = 2;

    private final Settings settings;

    /** What the user chose. */
    enum Theme {
        LIGHT, DARK, SYSTEM
    }

    /** The appearance that settings remember. */
    public Appearance(Settings settings) {
        this.settings = settings;
    }

    /** {@return what was chosen; the system's own until something is} */
    Theme theme() {
        return settings.find("theme").flatMap(Appearance::named).orElse(Theme.SYSTEM);
    }

    private static Optional<Theme> named(String name) {
        for (Theme theme : Theme.values()) {
            if (theme.name().equals(name)) {
                return Optional.of(theme);
            }
        }
        return Optional.empty();
    }

    /** Installs what is remembered; once the first window is made, the system is asked where it is to be followed. */
    public void start() {
        Look.install(remembered(), scale());
        SwingUtilities.invokeLater(this::askSystem);
    }

    private Mode remembered() {
        return switch (theme()) {
            case LIGHT -> Mode.LIGHT;
            case DARK -> Mode.DARK;
            case SYSTEM -> settings.find("theme.system").filter("DARK"::equals).isPresent() ? Mode.DARK : Mode.LIGHT;
        };
    }

    private double scale() {
        return Math.max(LEAST, Math.min(MOST, settings.number("scale", 1)));
    }

    private void askSystem() {
        if (theme() == Theme.SYSTEM) {
            Job.start(progress -> Settings.systemIsDark(), SwingUtilities::invokeLater, share -> { },
                    ended -> ended.tell(dark -> dark.ifPresent(this::hear), unknown -> {
                        // the theme stays as it was last known
                    }));
        }
    }

    private void hear(boolean dark) {
        settings.set("theme.system", dark ? "DARK" : "LIGHT");
        if (remembered() != Look.mode()) {
            apply();
        }
    }

    void choose(Theme theme) {
        settings.set("theme", theme.name());
        apply();
        askSystem();
    }

    void larger() {
        scaleTo(scale() * STEP);
    }

    void smaller() {
        scaleTo(scale() / STEP);
    }

    private void scaleTo(double scale) {
        settings.set("scale", Double.toString(Math.max(LEAST, Math.min(MOST, scale))));
        apply();
    }

    private void apply() {
        Look.install(remembered(), scale());
        FlatLaf.updateUI();
    }
}

package fairpull.ui;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepTest;
import fairpull.app.usecase.StartingPlan;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.ui.frame.Appearance;
import fairpull.ui.frame.Windows;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Starts the window. */
public final class Desktop {
    private static final String STARTED = "started";

    private Desktop() {
    }

    /**
     * Opens a window on a test, or on a new one; returns as soon as it is on its way.
     *
     * @param test the folder of a test
     * @throws InputException if there is no display, or the folder holds no test
     */
    public static void open(Optional<Path> test) throws IOException {
        requireDisplay();
        Settings settings = Settings.ofSystem();
        Document document = test.isPresent() ? KeepTest.open(test.get()) : Document.unsaved(StartingPlan.in(settings.units()));
        List<Recovery.Found> found = Recovery.found(settings);
        SwingUtilities.invokeLater(() -> {
            new Appearance(settings).start();
            Windows windows = new Windows(settings);
            if (test.isEmpty() && found.isEmpty() && settings.find(STARTED).isEmpty()) {
                windows.welcome();
            } else {
                windows.show(document);
            }
            settings.set(STARTED, "yes");
            found.forEach(windows::offer);
        });
    }

    private static void requireDisplay() {
        try {
            if (!GraphicsEnvironment.isHeadless()) {
                Toolkit.getDefaultToolkit().getScreenSize();
                return;
            }
        } catch (HeadlessException | AWTError | NoClassDefFoundError noDisplay) {
            throw noDisplay();
        }
        throw noDisplay();
    }

    private static InputException noDisplay() {
        return new InputException(Place.none(), "there is no display for the window",
                "use the commands instead, such as `fairpull new`, `check`, `sheet`, `judge` and `report`; `fairpull --help` lists them");
    }
}

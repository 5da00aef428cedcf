package fairpull.ui;

import fairpull.app.document.Document;
import fairpull.app.document.Recovery;
import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepTest;
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
        Optional<Document> document = test.isPresent() ? Optional.of(KeepTest.open(test.get())) : Optional.empty();
        List<Recovery.Found> found = Recovery.found(settings);
        SwingUtilities.invokeLater(() -> {
            settings.keep(SwingUtilities::invokeLater);
            new Appearance(settings).start();
            new Windows(settings).begin(document, found);
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

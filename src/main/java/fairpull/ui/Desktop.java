package fairpull.ui;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.document.Unsaved;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.keeping.OpenedAt;
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
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Starts the window. */
public final class Desktop {
    private Desktop() {
    }

    /**
     * Opens a window on a test, on a publication to be audited, or on a new test; returns as soon as it is on its way.
     *
     * @param asked the folder of a test, or the file of a publication
     * @throws InputException if there is no display, or nothing of both is there
     */
    public static void open(Optional<Path> asked) throws IOException {
        requireDisplay();
        Settings settings = Settings.ofSystem();
        Unsaved found = Unsaved.in(settings);
        if (asked.filter(KeepAudit::isFile).isPresent()) {
            AuditDocument audit = KeepAudit.open(asked.get());
            start(settings, windows -> windows.beginAudit(audit, found));
            return;
        }
        Optional<Document> document = asked.isPresent() ? Optional.of(KeepTest.open(asked.get())) : Optional.empty();
        // a day that was under way in a window that never ended goes on
        List<Document> running = asked.isPresent() ? List.of() : OpenedAt.running(Windows.left(settings));
        start(settings, windows -> windows.begin(document, found, running));
    }

    private static void start(Settings settings, Consumer<Windows> begin) {
        SwingUtilities.invokeLater(() -> {
            settings.keep(SwingUtilities::invokeLater);
            new Appearance(settings).start();
            begin.accept(new Windows(settings));
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

package fairpull.ui;

import fairpull.app.document.Settings;
import fairpull.domain.pull.PullId;
import fairpull.ui.frame.TestPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;

/** The page Run in its states: next to be waited for, late, swapping, blind, back at A, over; and in larger type. */
final class RunGallery {
    private final Mode mode;
    private final int width;
    private final int height;
    private final int scale;
    private final BiConsumer<String, TestPane> writer;

    RunGallery(Mode mode, int width, int height, int scale, BiConsumer<String, TestPane> writer) {
        this.mode = mode;
        this.width = width;
        this.height = height;
        this.scale = scale;
        this.writer = writer;
    }

    /** Draws them all; each is written under its name. */
    void draw() throws Exception {
        draw("run", DayUnderWay.State.WAITING, false, 1);
        if (scale > 1) {
            return;
        }
        for (DayUnderWay.State state : DayUnderWay.State.values()) {
            if (state != DayUnderWay.State.WAITING) {
                draw("run-" + state.name().toLowerCase(Locale.ROOT), state, false, 1);
            }
        }
        draw("run-blind", DayUnderWay.State.BACK, true, 1);
        draw("run-type-1.5", DayUnderWay.State.WAITING, false, 1.5);
        draw("run-type-2", DayUnderWay.State.WAITING, false, 2);
        SwingUtilities.invokeAndWait(() -> Look.install(mode, 1));
    }

    private void draw(String name, DayUnderWay.State state, boolean blind, double type) throws Exception {
        Path test = Files.createTempDirectory("gallery");
        Settings settings = Settings.in(test.resolve("settings"));
        TestPane[] pane = new TestPane[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(mode, type);
            if (blind) {
                settings.set("run.blind:" + test.toAbsolutePath().normalize(), "on");
            }
            try {
                pane[0] = OffScreen.onScreenOf(scale, DayUnderWay.pane(test, settings, state));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
            OffScreen.laidOut(pane[0], width, height);
        });
        Waiting.forQuiet();
        SwingUtilities.invokeAndWait(() -> {
            if (state == DayUnderWay.State.BACK) {
                pane[0].strip().choose(new PullId("B1", false, 2));
            }
            OffScreen.laidOut(pane[0], width, height);
        });
        Waiting.forQuiet();
        SwingUtilities.invokeAndWait(() -> writer.accept(name, pane[0]));
    }
}

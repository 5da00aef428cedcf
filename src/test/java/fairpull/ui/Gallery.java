package fairpull.ui;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.ui.frame.HelpView;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.Page;
import fairpull.ui.page.tracing.TracedExample;
import fairpull.ui.page.tracing.TracingPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Draws every page of the window with the invented example to a picture, and its help, light and dark, at single and double size: {@code Gallery FOLDER}. */
public final class Gallery {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final double LARGE = 1.5;

    private Gallery() {
    }

    /** Draws them. */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("java.awt.headless", "true");
        Path folder = Files.createDirectories(Path.of(arguments.length > 0 ? arguments[0] : "target/pictures"));
        for (Mode mode : Mode.values()) {
            for (int scale : new int[] {1, 2}) {
                draw(folder, mode, scale);
            }
        }
        System.exit(0);
    }

    private static void draw(Path folder, Mode mode, int scale) throws Exception {
        Document document = Document.unsaved(ExamplePlan.plan());
        TestPane[] pane = new TestPane[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(mode, 1);
            pane[0] = OffScreen.onScreenOf(scale, new TestPane(document, Settings.in(folder.resolve("none")), Pages::of));
            OffScreen.laidOut(pane[0], WIDTH, HEIGHT);
        });
        for (Page page : pane[0].pages().stream().filter(one -> one.notYet(document).isEmpty()).toList()) {
            SwingUtilities.invokeAndWait(() -> {
                OffScreen.silence(page.view());
                pane[0].go(page);
                OffScreen.laidOut(pane[0], WIDTH, HEIGHT);
            });
            Waiting.forQuiet();
            SwingUtilities.invokeAndWait(() -> write(folder, page.key().replace("page.", ""), mode, scale, pane[0]));
        }
        drawFinding(folder, mode, scale, "panel-filter", "finding");
        drawFinding(folder, mode, scale, "electric-pump", "finding-gain");
        new RunGallery(mode, WIDTH, HEIGHT, scale, (name, day) -> write(folder, name, mode, scale, day)).draw();
        SwingUtilities.invokeAndWait(() -> write(folder, "help", mode, scale, OffScreen.onScreenOf(scale, new HelpView())));
        ShelfGallery.draw(folder, (name, board) -> Waiting.onWindowThread(() -> write(folder, name, mode, scale, board)), scale);
        TracingPane tracing = TracedExample.pane(folder);
        SwingUtilities.invokeAndWait(() -> write(folder, "tracing", mode, scale, OffScreen.onScreenOf(scale, tracing)));
        TestPane[] judged = new TestPane[1];
        AuditGallery.draw(mode, 1, scale, WIDTH, HEIGHT, (name, shown) -> write(folder, name, mode, scale, shown));
        if (scale == 1) {
            AuditGallery.draw(mode, LARGE, scale, WIDTH, HEIGHT, (name, shown) -> write(folder, name + "-large", mode, scale, shown));
            Waiting.onWindowThread(() -> Look.install(mode, 1));
        }
        PullsGallery.draw(mode, WIDTH, HEIGHT, name -> Waiting.onWindowThread(() -> write(folder, name, mode, scale, judged[0])),
                made -> judged[0] = made);
    }

    /** The finding of a test that was run. */
    private static void drawFinding(Path folder, Mode mode, int scale, String test, String name) throws Exception {
        Document document = KeepTest.open(Path.of("plans").resolve(test));
        TestPane[] pane = new TestPane[1];
        SwingUtilities.invokeAndWait(() -> {
            pane[0] = OffScreen.onScreenOf(scale, new TestPane(document, Settings.in(folder.resolve("none")), Pages::of));
            pane[0].pages().stream().filter(page -> page.key().equals("page.finding")).forEach(pane[0]::go);
            OffScreen.laidOut(pane[0], WIDTH, HEIGHT);
        });
        Waiting.forQuiet();
        SwingUtilities.invokeAndWait(() -> write(folder, name, mode, scale, pane[0]));
    }

    private static void write(Path folder, String shown, Mode mode, int scale, JComponent view) {
        String name = shown + "-" + mode.name().toLowerCase(Locale.ROOT) + "-" + scale + "x.png";
        BufferedImage image = OffScreen.picture(view, WIDTH, HEIGHT, scale);
        try {
            File file = folder.resolve(name).toFile();
            ImageIO.write(image, "png", file);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}

package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.usecase.KeepTest;
import fairpull.app.usecase.Outlook;
import fairpull.app.usecase.SheetRequest;
import fairpull.app.usecase.StartingPlan;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.WriteSheet;
import fairpull.domain.InputException;
import fairpull.domain.plan.Plan;
import fairpull.ui.theme.Words;
import java.awt.Desktop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;

/** What the menus of a window do. Files are read and written beside the window's thread. */
final class TestActions {
    private final TestWindow window;
    private final Windows windows;

    TestActions(TestWindow window, Windows windows) {
        this.window = window;
        this.windows = windows;
    }

    /** Work on files. */
    private interface OnDisk<R> {
        R run() throws IOException;
    }

    private <R> void onDisk(OnDisk<R> work, Consumer<R> then) {
        Job.start(progress -> {
            try {
                return work.run();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }, SwingUtilities::invokeLater, share -> { }, ended -> {
            ended.fault().ifPresent(fault -> window.pane().say(words(fault)));
            ended.result().ifPresent(then);
        });
    }

    private static String words(RuntimeException fault) {
        if (fault instanceof InputException unusable) {
            return unusable.oneLine();
        }
        if (fault instanceof UsageException misuse) {
            return misuse.problem();
        }
        return fault instanceof UncheckedIOException disk ? Words.of("disk", String.valueOf(disk.getCause().getMessage()))
                : Words.of("fault", fault);
    }

    void newTest() {
        windows.show(Document.unsaved(StartingPlan.in(windows.settings().units())));
    }

    void example() {
        windows.welcome();
    }

    void open() {
        choose("open").ifPresent(this::open);
    }

    /** Opens the test in a folder, in this window while nobody has touched what it shows. */
    void open(Path folder) {
        onDisk(() -> KeepTest.open(folder), document -> {
            windows.show(document);
            if (window.document().isUntouched()) {
                window.end();
            }
        });
    }

    void save() {
        save(() -> { });
    }

    private void save(Runnable then) {
        Document document = window.document();
        if (document.isSealed()) {
            if (document.isChanged()) {
                window.pane().askReason();
            }
            return;
        }
        if (document.folder().isEmpty()) {
            choose("saveAs").ifPresent(folder -> create(folder, then));
            return;
        }
        Plan plan = document.plan();
        Path folder = document.folder().get();
        onDisk(() -> {
            KeepTest.write(folder, plan);
            return plan;
        }, written -> {
            document.savedTo(folder, written);
            then.run();
        });
    }

    /** Keeps the test in a folder that holds none yet. */
    void create(Path folder, Runnable then) {
        Plan plan = window.document().plan();
        onDisk(() -> {
            KeepTest.create(folder, plan);
            return plan;
        }, written -> {
            window.document().savedTo(folder, written);
            windows.settings().opened(folder);
            then.run();
        });
    }

    /** Asks once more in place, then saves and seals. */
    void seal() {
        if (window.document().isSealed()) {
            window.pane().say(Words.of("state.sealed", window.document().sealCode().orElseThrow()));
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("seal.yes", () -> save(this::sealSaved));
        answers.put("seal.no", () -> { });
        Plan plan = window.document().plan();
        onDisk(() -> Outlook.beforeSeal(plan), seen -> window.pane().ask(seen + " " + Words.of("seal.question"), answers));
    }

    private void sealSaved() {
        Path folder = window.document().folder().orElseThrow();
        onDisk(() -> KeepTest.seal(folder, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS)), code -> {
            window.document().sealedAs(code);
            window.pane().say(Words.of("seal.done", code));
        });
    }

    /** Writes the amendment that was made, with its reason. */
    void amend(String because) {
        Document document = window.document();
        Plan plan = document.plan();
        Path folder = document.folder().orElseThrow();
        onDisk(() -> {
            KeepTest.amend(folder, plan, because, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS));
            return plan;
        }, written -> {
            document.amendedTo(written);
            window.pane().say(Words.of("amend.done"));
        });
    }

    /** Saves the run sheet where asked, and opens it where the system can, for printing. */
    void sheet() {
        Document document = window.document();
        if (document.folder().isEmpty() || document.isChanged()) {
            window.pane().say(Words.of("sheet.save"));
            return;
        }
        Path folder = document.folder().get();
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setDialogTitle(Words.of("menu.sheet"));
        chooser.setSelectedFile(folder.resolve("sheet.pdf").toFile());
        if (chooser.showSaveDialog(window) == JFileChooser.APPROVE_OPTION) {
            sheet(folder, chooser.getSelectedFile().toPath());
        }
    }

    private void sheet(Path folder, Path target) {
        boolean letter = List.of("US", "CA", "MX").contains(Locale.getDefault().getCountry());
        SheetRequest request = new SheetRequest(letter ? "letter" : "a4", windows.settings().units().name().toLowerCase(Locale.ROOT), "",
                "");
        onDisk(() -> {
            WriteSheet.write(folder, target, request);
            if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
                Desktop.getDesktop().open(target.toFile());
            }
            return target;
        }, written -> window.pane().say(Words.of("sheet.done", written)));
    }

    /** A chart in a picture is traced in a window of its own; it belongs to no test. */
    void trace() {
        new TracingWindow(windows.settings()).setVisible(true);
    }

    void undo() {
        window.document().undo();
    }

    void redo() {
        window.document().redo();
    }

    void close() {
        Document document = window.document();
        if (!document.isChanged() || document.isUntouched()) {
            window.end();
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("close.save", () -> save(window::end));
        answers.put("close.drop", window::end);
        answers.put("close.stay", () -> { });
        window.pane().ask(Words.of("close.question"), answers);
    }

    private Optional<Path> choose(String key) {
        JFileChooser chooser = new JFileChooser(windows.settings().recent().stream().findFirst().map(Path::getParent)
                .map(Path::toFile).orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(Words.of("menu." + key));
        int answer = key.equals("open") ? chooser.showOpenDialog(window) : chooser.showSaveDialog(window);
        return answer == JFileChooser.APPROVE_OPTION ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    TestWindow window() {
        return window;
    }
}

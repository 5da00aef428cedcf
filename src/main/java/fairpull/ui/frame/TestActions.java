package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.app.task.Job;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.keeping.SheetRequest;
import fairpull.app.usecase.keeping.WriteSheet;
import fairpull.app.usecase.planning.Outlook;
import fairpull.domain.plan.Plan;
import fairpull.report.chart.PrintedPages;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.SwingUtilities;

/**
 * What the menus of a window do. Files are read and written beside the window's thread. What is still being typed counts as typed before
 * any of it; a plan is not kept while a field shows something else.
 */
final class TestActions {
    private static final int LONGEST_NAME = 40;

    private final OpenTest test;
    private final Windows windows;
    private final ReportActions reports;

    TestActions(OpenTest test, Windows windows) {
        this.test = test;
        this.windows = windows;
        reports = new ReportActions(test);
    }

    /** {@return what is done with findings} */
    ReportActions reports() {
        return reports;
    }

    Document document() {
        return test.document();
    }

    TestPane pane() {
        return test.pane();
    }

    void newTest() {
        windows.fresh();
    }

    void example() {
        windows.welcome();
    }

    void open() {
        test.shell().chooseFolder("menu.open").ifPresent(this::open);
    }

    /** Opens the test in a folder, in this window while nobody has touched what it shows; a publication in a window of its own. */
    void open(Path folder) {
        if (KeepAudit.isFile(folder)) {
            pane().onDisk(() -> KeepAudit.open(folder), windows::audit);
            return;
        }
        pane().onDisk(() -> KeepTest.open(folder), document -> {
            windows.show(document);
            if (document().isUntouched() && !pane().complains()) {
                test.end();
            }
        });
    }

    /** Writes the plan into the folder of its test; asks for one where it has none yet. */
    void save() {
        save(() -> { });
    }

    private void save(Runnable then) {
        pane().flushed(() -> {
            if (document().isFixed() || pane().showsComplaint()) {
                return;
            }
            if (document().isAmending()) {
                pane().askReason();
            } else if (document().folder().isEmpty()) {
                test.shell().chooseFolder("menu.saveAs", proposed()).ifPresent(folder -> create(folder, then));
            } else {
                write(document().folder().get(), then);
            }
        });
    }

    /** A folder of its own for a test, named by its title, beside the one that was opened last. */
    private Path proposed() {
        String name = document().plan().title().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
        Path beside = windows.settings().recent().stream().findFirst().map(Path::getParent)
                .orElse(Path.of(System.getProperty("user.home", ".")));
        return beside.resolve(name.isEmpty() ? Words.of("test.folder") : name.substring(0, Math.min(name.length(), LONGEST_NAME)));
    }

    private void write(Path folder, Runnable then) {
        Plan plan = document().plan();
        pane().onDisk(() -> {
            KeepTest.write(folder, plan);
            return plan;
        }, written -> {
            document().savedTo(folder, written);
            then.run();
        });
    }

    /** Keeps the test in a folder that holds none yet. */
    private void create(Path folder, Runnable then) {
        Plan plan = document().plan();
        pane().onDisk(() -> {
            KeepTest.create(folder, plan);
            return plan;
        }, written -> {
            document().savedTo(folder, written);
            windows.settings().opened(folder);
            windows.remember();
            then.run();
        });
    }

    /** Makes a new test of the plan as it stands, without seal and pulls, in a window of its own. This one stays as it is. */
    void saveNew() {
        pane().flushed(() -> {
            if (document().folder().isEmpty()) {
                save();
            } else if (!pane().showsComplaint()) {
                Plan plan = document().plan();
                test.shell().chooseFolder("menu.saveNew", proposed()).ifPresent(folder -> pane().onDisk(() -> {
                    KeepTest.create(folder, plan);
                    return KeepTest.open(folder);
                }, windows::show));
            }
        });
    }

    /** Asks once more in place, then saves and seals. */
    void seal() {
        if (document().isSealed()) {
            pane().say(Words.of("state.sealed", document().sealCode().orElseThrow()));
            return;
        }
        pane().flushed(() -> {
            if (!pane().showsComplaint()) {
                Plan plan = document().plan();
                pane().onDisk(() -> Outlook.beforeSeal(plan), this::askSeal);
            }
        });
    }

    private void askSeal(String seen) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("seal.yes", () -> save(this::sealSaved));
        answers.put("seal.no", () -> { });
        pane().ask(seen + " " + Words.of("seal.question"), answers);
    }

    private void sealSaved() {
        Path folder = document().folder().orElseThrow();
        pane().onDisk(() -> KeepTest.seal(folder, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS)), code -> {
            document().sealedAs(code);
            pane().say(Words.of("seal.done", code));
        });
    }

    /** Writes the amendment that was made, with its reason. */
    void amend(String because) {
        if (pane().showsComplaint()) {
            return;
        }
        Plan plan = document().plan();
        Path folder = document().folder().orElseThrow();
        pane().onDisk(() -> {
            KeepTest.amend(folder, plan, because, OffsetDateTime.now().truncatedTo(ChronoUnit.SECONDS));
            return plan;
        }, written -> {
            document().amendedTo(written);
            pane().say(Words.of("amend.done"));
        });
    }

    /** Saves the run sheet where asked, and opens it where the system can, for printing. */
    void sheet() {
        pane().flushed(() -> {
            if (document().folder().isEmpty() || document().isChanged()) {
                pane().say(Words.of("sheet.save"));
                return;
            }
            Path folder = document().folder().get();
            test.shell().chooseFile("menu.sheet", folder.resolve("sheet.pdf"))
                    .ifPresent(target -> pane().replacing(target, () -> sheet(folder, target)));
        });
    }

    /** Prints the run sheet; where the system knows no printer, says so and names the other way. */
    void print() {
        pane().flushed(() -> {
            if (document().folder().isEmpty() || document().isChanged()) {
                pane().say(Words.of("sheet.save"));
                return;
            }
            Path folder = document().folder().get();
            SheetRequest request = request();
            pane().say(Words.of("sheet.making"));
            pane().onDisk(() -> Printing.isPossible() ? Optional.of(WriteSheet.pages(folder, request)) : Optional.<PrintedPages>empty(),
                    this::offer);
        });
    }

    private void offer(Optional<PrintedPages> pages) {
        pane().say(pages.isPresent() ? "" : Words.of("print.none"));
        pages.ifPresent(sheet -> new Printing(pane()::say).print(sheet, document().plan().title()));
    }

    private SheetRequest request() {
        boolean letter = List.of("US", "CA", "MX").contains(Locale.getDefault().getCountry());
        return new SheetRequest(letter ? "letter" : "a4", windows.settings().units().name().toLowerCase(Locale.ROOT), "", "");
    }

    private void sheet(Path folder, Path target) {
        SheetRequest request = request();
        pane().say(Words.of("sheet.making"));
        pane().onDisk(() -> WriteSheet.write(folder, target, request), written -> {
            pane().say(Words.of("sheet.done", target));
            view(target);
        });
    }

    /** That the system cannot show a sheet takes nothing from its being written. */
    private void view(Path sheet) {
        Job.start(Job.onDisk(() -> {
            test.shell().view(sheet);
            return sheet;
        }), SwingUtilities::invokeLater, share -> { }, ended -> ended.tell(viewed -> { },
                fault -> pane().say(Words.of("sheet.unviewed", sheet))));
    }

    /** The tests in a folder stand in a window of their own. */
    void shelf() {
        windows.shelf();
    }

    /** A publication is audited in a window of its own; it belongs to no test. */
    void audit() {
        windows.audit(AuditDocument.blank());
    }

    /** A chart in a picture is traced in a window of its own; it belongs to no test. */
    void trace() {
        new TracingWindow(windows.settings()).setVisible(true);
    }

    void undo() {
        pane().flushed(document()::undo);
    }

    void redo() {
        pane().flushed(document()::redo);
    }

    /** Ends the window; asks first where something would be lost with it. */
    void close() {
        pane().flushed(() -> {
            boolean edited = document().isChanged() && !document().isUntouched();
            if (!edited && !pane().complains()) {
                test.end();
                return;
            }
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("close.save", () -> save(test::end));
            answers.put("close.drop", test::end);
            answers.put("close.stay", () -> { });
            pane().ask(Words.of("close.question"), answers);
        });
    }
}

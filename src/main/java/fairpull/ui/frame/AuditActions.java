package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.task.Job;
import fairpull.app.usecase.KeepFile;
import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.tracing.KeepCurves;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.PublicationDraft;
import fairpull.ui.form.Entry;
import fairpull.ui.page.audit.AuditDesk;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** What the menus of the window of an audit do. Files are read and written beside the window's thread; none is replaced unasked. */
final class AuditActions implements AuditDesk.Opening {
    private final OpenAudit audit;
    private final Windows windows;

    AuditActions(OpenAudit audit, Windows windows) {
        this.audit = audit;
        this.windows = windows;
    }

    AuditDocument document() {
        return audit.document();
    }

    private AuditPane pane() {
        return audit.pane();
    }

    void flushed(Runnable work) {
        pane().flushed(work);
    }

    void fresh() {
        windows.audit(AuditDocument.blank());
    }

    @Override
    public void choose() {
        choose("menu.audit.open", this::open);
    }

    @Override
    public void choose(String key, Consumer<Path> then) {
        audit.shell().openFile(key, document().file().map(file -> file.toAbsolutePath().getParent())).ifPresent(then);
    }

    /** Opens the publication in a file, in this window while nobody has touched what it shows. */
    void open(Path file) {
        pane().onDisk(() -> KeepAudit.open(file), this::show);
    }

    @Override
    public void example(String name) {
        pane().onDisk(() -> KeepAudit.example(name), this::show);
    }

    private void show(AuditDocument opened) {
        windows.audit(opened);
        if (document().isUntouched() && !pane().complains()) {
            audit.end();
        }
    }

    /** Writes the publication into its file; asks for one where it has none yet. */
    void save() {
        save(() -> { });
    }

    private void save(Runnable then) {
        complete(publication -> {
            if (document().file().isPresent()) {
                write(document().file().get(), publication, then);
            } else {
                saveAs(publication, then);
            }
        });
    }

    void saveAs() {
        complete(publication -> saveAs(publication, () -> { }));
    }

    /** Goes on with the publication once it is one, and is what the fields show; what is lacking is said. */
    private void complete(Consumer<Publication> then) {
        pane().flushed(() -> {
            if (pane().showsComplaint()) {
                return;
            }
            Optional<Publication> publication = document().draft().publication();
            List<String> lacking = audit.auditing().lacking();
            Entry.lacking(pane(), empty(), Words.of("audit.lacking.field"));
            if (publication.isEmpty() || !lacking.isEmpty()) {
                pane().say(Words.of("audit.lacking", String.join(" ", lacking)));
            } else {
                then.accept(publication.get());
            }
        });
    }

    /** {@return the names of the fields without which there is no publication: half a figure, the first one where there is none} */
    private List<String> empty() {
        PublicationDraft draft = document().draft();
        List<String> empty = new ArrayList<>();
        for (int place = 0; place < draft.figures().size(); place++) {
            FigureDraft figure = draft.figures().get(place);
            if (!figure.isBlank() || place == 0 && draft.publication().isEmpty()) {
                if (figure.before().isEmpty()) {
                    empty.add("audit.figure.before." + place);
                }
                if (figure.after().isEmpty()) {
                    empty.add("audit.figure.after." + place);
                }
            }
        }
        for (int place = 0; place < draft.claims().size(); place++) {
            Publication.Claim claim = draft.claims().get(place);
            if (claim.words().isBlank() && claim.gain().isPresent()) {
                empty.add("audit.claim.words." + place);
            }
        }
        return empty;
    }

    private void saveAs(Publication publication, Runnable then) {
        Path proposed = document().file().orElse(Path.of(stem() + ".json"));
        audit.shell().chooseFile("menu.audit.saveAs", proposed).map(file -> KeepFile.named(file, ".json")).ifPresent(
                file -> pane().replacing(file, () -> write(file, publication, then)));
    }

    private void write(Path file, Publication publication, Runnable then) {
        PublicationDraft draft = document().draft();
        Path from = document().folder();
        Optional<Path> held = document().held();
        pane().onDisk(() -> {
            KeepCurves.carry(publication, from, file);
            AuditPublication.save(publication, file);
            if (held.isPresent()) {
                windows.settings().letGo(held.get());
            }
            return draft;
        }, written -> {
            document().savedTo(file, written);
            then.run();
        });
    }

    @Override
    public void beside(Consumer<Path> then) {
        if (document().file().isPresent()) {
            then.accept(document().file().get());
            return;
        }
        Optional<Path> held = document().held();
        pane().onDisk(() -> held.isPresent() ? held.get() : windows.settings().hold(), folder -> {
            document().hold(folder);
            then.accept(folder.resolve(stem() + ".json"));
        });
    }

    /** Opens the fair repeat as a plan, in the window of a test; where there is none, says why. */
    void repeat() {
        answered(answer -> {
            pane().say(Words.of("audit.repeat.working"));
            pane().onDisk(() -> KeepAudit.repeat(answer), repeat -> {
                pane().say(repeat.plan().isPresent() ? "" : repeat.words());
                repeat.plan().ifPresent(plan -> windows.plan(plan, repeat.words()));
            });
        });
    }

    /** Asks what the audit is to be written as. */
    void report() {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        for (AuditExport kind : AuditExport.values()) {
            answers.put("audit.export." + kind, () -> export(kind));
        }
        pane().ask(Words.of("audit.export.question"), answers);
    }

    /** Writes the audit, as the command would. */
    void export(AuditExport kind) {
        answered(answer -> {
            Path beside = document().file().map(file -> file.toAbsolutePath().resolveSibling(stem() + kind.ending()))
                    .orElse(Path.of(stem() + kind.ending()));
            audit.shell().chooseFile("audit.export." + kind, beside)
                    .ifPresent(file -> pane().replacing(file, () -> write(kind, answer, file)));
        });
    }

    private void write(AuditExport kind, AuditAnswer answer, Path file) {
        pane().say(Words.of("audit.export.making"));
        pane().onDisk(() -> {
            kind.write(answer, file);
            return file;
        }, written -> {
            pane().say(Words.of("audit.export.done", written));
            view(written);
        });
    }

    /** That the system cannot show it takes nothing from its being written. */
    private void view(Path file) {
        Job.start(Job.onDisk(() -> {
            audit.shell().view(file);
            return file;
        }), SwingUtilities::invokeLater, share -> { }, ended -> ended.tell(viewed -> { }, fault -> { }));
    }

    /** Goes on with what the audit answers to the fields as they stand. */
    private void answered(Consumer<AuditAnswer> then) {
        complete(publication -> pane().onDisk(() -> AuditPublication.audit(publication, document().folder()), then));
    }

    private String stem() {
        return document().file().map(file -> file.getFileName().toString().replaceFirst("\\.json$", ""))
                .orElse(Words.of("audit.file"));
    }

    void undo() {
        pane().flushed(document()::undo);
    }

    void redo() {
        pane().flushed(document()::redo);
    }

    /** Ends the window; asks first where something would be lost with it. */
    void close() {
        pane().flushed(() -> pane().pages().stream().filter(page -> page.begun().isPresent()).findFirst()
                .ifPresentOrElse(this::askAboutBegun, this::closeTaken));
    }

    private void askAboutBegun(AuditPage page) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("close.trace.back", () -> pane().go(page));
        answers.put("close.trace.drop", this::closeTaken);
        pane().ask(page.begun().orElseThrow(), answers);
    }

    private void closeTaken() {
        if (!document().isChanged() && !pane().complains()) {
            audit.end();
            return;
        }
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put("close.save", () -> save(audit::end));
        answers.put("close.drop", audit::end);
        answers.put("close.stay", () -> { });
        pane().ask(Words.of("close.question"), answers);
    }
}

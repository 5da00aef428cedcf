package fairpull.app.document;

import fairpull.app.task.Keeper;
import fairpull.domain.audit.PublicationDraft;
import fairpull.domain.plan.Plan;
import fairpull.io.json.DraftJson;
import fairpull.io.json.PlanJson;
import fairpull.io.settings.UserFolder;
import fairpull.io.settings.UserFolder.Kind;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Keeps the edits of one window on disk as they are made, whether of a test or of a publication, so that a kill loses nothing. Where the
 * disk fails it says so, once.
 */
public final class Recovery {
    private final UserFolder folder;
    private final Object document;
    private final Supplier<Optional<Edits>> edits;
    private final String id;
    private final Keeper keeper;
    private final Consumer<Throwable> failed;
    private Optional<String> tookOver = Optional.empty();
    private Supplier<Optional<Path>> held = Optional::empty;
    private boolean saidSo;
    private boolean ended;

    /** Edits that are not saved; their text is made beside the window's thread. */
    private record Edits(Kind kind, Optional<Path> where, Supplier<String> text) {
    }

    private Recovery(UserFolder folder, Object document, Supplier<Optional<Edits>> edits, Watch watch) {
        this.folder = folder;
        this.document = document;
        this.edits = edits;
        id = UserFolder.id(watch.window());
        failed = watch.failed();
        keeper = new Keeper(0, watch.asker());
    }

    /**
     * How a window is watched.
     *
     * @param window a number of its own among the windows of this process
     * @param asker runs what must run on the window's thread
     * @param failed hears that edits could not be kept, when that begins
     */
    public record Watch(int window, Executor asker, Consumer<Throwable> failed) {
    }

    /** {@return the watch over a test; recovery files lie beside the settings} */
    public static Recovery of(Settings settings, Document document, Watch watch) {
        Recovery recovery = new Recovery(settings.folder(), document, () -> edits(document), watch);
        document.listen(recovery::keep);
        // what was made for its user is worth keeping before it is edited
        edits(document).ifPresent(made -> recovery.keep());
        return recovery;
    }

    /** {@return the watch over a publication; recovery files lie beside the settings} */
    public static Recovery of(Settings settings, AuditDocument document, Watch watch) {
        Recovery recovery = new Recovery(settings.folder(), document, () -> edits(document), watch);
        recovery.held = document::held;
        document.listen(recovery::keep);
        return recovery;
    }

    private static Optional<Edits> edits(Document document) {
        Plan plan = document.plan();
        return document.isChanged() && !document.isUntouched()
                ? Optional.of(new Edits(Kind.PLAN, document.folder(), () -> PlanJson.indented(plan))) : Optional.empty();
    }

    private static Optional<Edits> edits(AuditDocument document) {
        PublicationDraft draft = document.draft();
        return document.isChanged()
                ? Optional.of(new Edits(Kind.PUBLICATION, document.file().or(() -> document.held().map(held -> held.resolve(Unsaved.HELD))),
                        () -> DraftJson.write(draft))) : Optional.empty();
    }

    private void keep() {
        Optional<Edits> now = edits.get();
        if (now.isPresent()) {
            ask(() -> folder.keep(now.get().kind(), new UserFolder.Recovered(id, now.get().where(), now.get().text().get())));
        } else {
            ask(() -> folder.forget(id));
        }
    }

    private void ask(Keeper.Work work) {
        Optional<String> old = tookOver;
        if (!ended) {
            keeper.ask(() -> {
                work.run();
                if (old.isPresent()) {
                    folder.forget(old.get());
                }
            }, () -> saidSo = false, fault -> {
                if (!saidSo) {
                    failed.accept(fault);
                }
                saidSo = true;
            });
        }
    }

    /** Ends the watch: what was not saved now is given up on purpose. */
    public void end() {
        Optional<Path> given = held.get();
        ask(() -> {
            folder.forget(id);
            if (given.isPresent()) {
                folder.letGo(given.get());
            }
        });
        ended = true;
    }

    /** Takes over what was found after a kill and is the document that is watched: it is kept here, and only then forgotten there. */
    public void takeOver(Unsaved.Found<?> found) {
        if (found.document() != document) {
            throw new IllegalArgumentException("another document is watched here");
        }
        tookOver = Optional.of(found.id()).filter(old -> !old.equals(id));
        keep();
    }
}

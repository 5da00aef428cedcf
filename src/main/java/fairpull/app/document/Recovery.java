package fairpull.app.document;

import fairpull.app.task.Keeper;
import fairpull.domain.InputException;
import fairpull.domain.plan.Plan;
import fairpull.io.folder.TestFolder;
import fairpull.io.settings.UserFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Keeps the edits of one window on disk as they are made, so that a kill loses nothing. Where the disk fails it says so, once. */
public final class Recovery {
    private final UserFolder folder;
    private final Document document;
    private final String id;
    private final Keeper keeper;
    private final Consumer<Throwable> failed;
    private Optional<String> tookOver = Optional.empty();
    private boolean saidSo;
    private boolean ended;

    private Recovery(UserFolder folder, Document document, String id, Executor asker, Consumer<Throwable> failed) {
        this.folder = folder;
        this.document = document;
        this.id = id;
        this.failed = failed;
        keeper = new Keeper(0, asker);
    }

    /**
     * Watches a document.
     *
     * @param settings beside which recovery files lie
     * @param document what is kept
     * @param window a number of its own among the windows of this process
     * @param asker runs what must run on the window's thread
     * @param failed hears that edits could not be kept, when that begins
     * @return the watch
     */
    public static Recovery of(Settings settings, Document document, int window, Executor asker, Consumer<Throwable> failed) {
        Recovery recovery = new Recovery(settings.folder(), document, UserFolder.id(window), asker, failed);
        document.listen(recovery::keep);
        return recovery;
    }

    private void keep() {
        Plan plan = document.plan();
        Optional<Path> test = document.folder();
        if (document.isChanged() && !document.isUntouched()) {
            ask(() -> folder.keep(id, test, plan));
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
        ask(() -> folder.forget(id));
        ended = true;
    }

    /** Takes over what was found after a kill and is the document that is watched: it is kept here, and only then forgotten there. */
    public void takeOver(Found found) {
        if (found.document() != document) {
            throw new IllegalArgumentException("another document is watched here");
        }
        tookOver = Optional.of(found.id()).filter(old -> !old.equals(id));
        keep();
    }

    /**
     * Edits that were never saved, of a window that ended without saying so.
     *
     * @param id of their file
     * @param document a document that holds them
     */
    public record Found(String id, Document document) {
    }

    /** {@return edits that were never saved, of windows that ended without saying so; what reached its test all the same is forgotten} */
    public static List<Found> found(Settings settings) throws IOException {
        List<Found> found = new ArrayList<>();
        for (UserFolder.Recovered kept : settings.folder().recoverable()) {
            Document document = document(kept);
            if (document.isChanged()) {
                found.add(new Found(kept.id(), document));
            } else {
                settings.folder().forget(kept.id());
            }
        }
        return found;
    }

    /** Edits of a test that is sealed are an amendment that was never written. */
    private static Document document(UserFolder.Recovered kept) {
        try {
            if (kept.folder().isPresent()) {
                TestFolder.Content content = TestFolder.open(kept.folder().get()).read();
                if (content.isSealed() && content.seal().isPresent()) {
                    return Document.recoveredAmendment(kept.folder().get(), content.plan(), content.seal().get().code(), kept.plan());
                }
                return Document.recovered(kept.folder(), Optional.of(content.plan()), kept.plan());
            }
        } catch (IOException | InputException gone) {
            // the edits are shown all the same; where they can be kept is found out when they are saved
        }
        return Document.recovered(kept.folder(), Optional.empty(), kept.plan());
    }
}

package fairpull.app.document;

import fairpull.app.task.Latest;
import fairpull.domain.InputException;
import fairpull.domain.plan.Plan;
import fairpull.io.folder.TestFolder;
import fairpull.io.settings.UserFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Keeps the edits of one window on disk as they are made, so that a kill loses nothing. */
public final class Recovery {
    private final UserFolder folder;
    private final Document document;
    private final String id;
    private final Latest<Boolean> writing;
    private long asked;
    private long written;

    private Recovery(UserFolder folder, Document document, String id, Executor asker) {
        this.folder = folder;
        this.document = document;
        this.id = id;
        writing = new Latest<>(asker);
    }

    /**
     * Watches a document.
     *
     * @param settings beside which recovery files lie
     * @param document what is kept
     * @param window a number of its own among the windows of this process
     * @param asker runs what must run on the window's thread
     * @return the watch
     */
    public static Recovery of(Settings settings, Document document, int window, Executor asker) {
        Recovery recovery = new Recovery(settings.folder(), document, UserFolder.id(window), asker);
        document.listen(recovery::keep);
        return recovery;
    }

    private void keep() {
        Plan plan = document.plan();
        Optional<Path> test = document.folder();
        boolean changed = document.isChanged() && !document.isUntouched();
        long number = ++asked;
        writing.ask(progress -> {
            write(number, test, plan, changed);
            return true;
        }, ended -> { });
    }

    /** Writes come from several threads; an older one never overtakes a newer. */
    private synchronized void write(long number, Optional<Path> test, Plan plan, boolean changed) {
        if (number < written) {
            return;
        }
        written = number;
        try {
            if (changed) {
                folder.keep(id, test, plan);
            } else {
                folder.forget(id);
            }
        } catch (IOException notKept) {
            throw new UncheckedIOException(notKept);
        }
    }

    /** Ends the watch: what was not saved now is given up on purpose. */
    public void end() {
        writing.stop();
        write(Long.MAX_VALUE, document.folder(), document.plan(), false);
    }

    /** Keeps the document as it stands now, such as one that was found after a kill. */
    public void keepNow() {
        write(++asked, document.folder(), document.plan(), true);
    }

    /**
     * Edits that were never saved, of a window that ended without saying so.
     *
     * @param id of their file
     * @param document a document that holds them
     */
    public record Found(String id, Document document) {
    }

    /** {@return edits that were never saved, of windows that ended without saying so} */
    public static List<Found> found(Settings settings) throws IOException {
        return settings.folder().recoverable().stream().map(kept -> new Found(kept.id(), document(kept))).toList();
    }

    /** Edits of a test that is sealed are an amendment that was never written. */
    private static Document document(UserFolder.Recovered kept) {
        try {
            if (kept.folder().isPresent()) {
                TestFolder.Content content = TestFolder.open(kept.folder().get()).read();
                if (content.isSealed() && content.seal().isPresent()) {
                    return Document.recoveredAmendment(kept.folder().get(), content.plan(), content.seal().get().code(), kept.plan());
                }
            }
        } catch (IOException | InputException gone) {
            // the edits are shown all the same; where they can be kept is found out when they are saved
        }
        return Document.recovered(kept.folder(), Optional.empty(), kept.plan());
    }

    /** Forgets what was found, once it is kept elsewhere. */
    public static void forget(Settings settings, Found found) {
        try {
            settings.folder().forget(found.id());
        } catch (IOException stays) {
            throw new UncheckedIOException(stays);
        }
    }
}

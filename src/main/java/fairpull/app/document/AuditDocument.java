package fairpull.app.document;

import fairpull.domain.audit.Publication;
import fairpull.domain.audit.PublicationDraft;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A published comparison while it is typed and audited, with one undo stack over all edits. Not to be shared between threads. */
public final class AuditDocument {
    private final List<Runnable> listeners = new ArrayList<>();
    private final History<PublicationDraft> history;
    private PublicationDraft saved;
    private Optional<Path> file;
    private Optional<Path> held = Optional.empty();

    private AuditDocument(PublicationDraft draft, Optional<Path> file) {
        history = new History<>(draft);
        saved = draft;
        this.file = file;
    }

    /** {@return a publication of which nothing is known yet} */
    public static AuditDocument blank() {
        return new AuditDocument(PublicationDraft.blank(), Optional.empty());
    }

    /** {@return a publication that lies in no file of the user's, such as an invented one} */
    public static AuditDocument of(Publication publication) {
        return new AuditDocument(PublicationDraft.of(publication), Optional.empty());
    }

    /** {@return a publication as it lies in a file} */
    public static AuditDocument of(Path file, Publication publication) {
        return new AuditDocument(PublicationDraft.of(publication), Optional.of(file));
    }

    /**
     * A publication with edits that were never saved, as they were found after a kill.
     *
     * @param file in which it was kept; empty where it had none
     * @param saved what lies there; empty where nothing can be read
     * @param draft as it was last seen
     * @return the publication, with those edits in it
     */
    public static AuditDocument recovered(Optional<Path> file, Optional<Publication> saved, PublicationDraft draft) {
        AuditDocument document = new AuditDocument(draft, file);
        document.saved = saved.map(PublicationDraft::of).orElseGet(PublicationDraft::blank);
        return document;
    }

    /** {@return the publication as it stands} */
    public PublicationDraft draft() {
        return history.now();
    }

    /** {@return the file in which it is kept, once it is} */
    public Optional<Path> file() {
        return file;
    }

    /** {@return the folder that holds the files of its curves while it lies in no file itself, once there are any} */
    public Optional<Path> held() {
        return held;
    }

    /** Has the files of its curves held in a folder until it lies in a file, beside which they then are. */
    public void hold(Path folder) {
        held = Optional.of(folder);
    }

    /** {@return where the files of its curves lie} */
    public Path folder() {
        return file.map(path -> path.toAbsolutePath().getParent()).or(() -> held).orElse(Path.of(""));
    }

    /** {@return whether it differs from what was opened or saved last} */
    public boolean isChanged() {
        return !saved.equals(draft());
    }

    /** {@return whether it is still a blank one that nobody touched} */
    public boolean isUntouched() {
        return file.isEmpty() && history.undoLabel().isEmpty() && history.redoLabel().isEmpty()
                && draft().equals(PublicationDraft.blank());
    }

    /**
     * Changes it. An edit that changes nothing leaves no trace.
     *
     * @param label what “Undo” says
     * @param field edits of the same field one after the other are taken back as one; empty for those that never are
     * @throws IllegalArgumentException if there is no such publication, in words for people; it then stays as it is
     */
    public void edit(String label, String field, UnaryOperator<PublicationDraft> change) {
        PublicationDraft next = change.apply(draft());
        next.publication();
        if (history.edit(label, field, next)) {
            tell();
        }
    }

    /** {@return what “Undo” would take back} */
    public Optional<String> undoLabel() {
        return history.undoLabel();
    }

    /** {@return what “Redo” would do again} */
    public Optional<String> redoLabel() {
        return history.redoLabel();
    }

    /** Takes the last edit back. */
    public void undo() {
        if (history.undo()) {
            tell();
        }
    }

    /** Does the edit again that was taken back last. */
    public void redo() {
        if (history.redo()) {
            tell();
        }
    }

    /** Hears that a state now lies in a file; what was edited meanwhile stays changed. */
    public void savedTo(Path where, PublicationDraft written) {
        file = Optional.of(where);
        held = Optional.empty();
        saved = written;
        tell();
    }

    /** Has {@code listener} called after every change. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}

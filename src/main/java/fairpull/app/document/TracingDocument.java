package fairpull.app.document;

import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.Tracing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A chart while it is traced: its picture, and an undo stack over everything that was set. Not to be shared between threads. */
public final class TracingDocument {
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<OpenedPicture> opened = Optional.empty();
    private Optional<History<Tracing>> history = Optional.empty();
    private Optional<Tracing> saved = Optional.empty();

    /** Begins anew with a picture; what was traced from the one before is forgotten. */
    public void open(OpenedPicture picture) {
        opened = Optional.of(picture);
        Tracing nothing = Tracing.of(picture.file());
        history = Optional.of(new History<>(nothing));
        saved = Optional.of(nothing);
        tell();
    }

    /** {@return what was opened} */
    public Optional<OpenedPicture> opened() {
        return opened;
    }

    /** {@return the pixels of the picture} */
    public Optional<Picture> picture() {
        return opened.map(OpenedPicture::picture);
    }

    /** {@return what was set so far; empty while there is no picture} */
    public Optional<Tracing> tracing() {
        return history.map(History::now);
    }

    /** {@return whether there is something that was not saved} */
    public boolean isChanged() {
        return !tracing().equals(saved);
    }

    /**
     * Changes what was set; nothing without a picture.
     *
     * @param label what “Undo” says
     * @param field edits of the same field one after the other are taken back as one; empty for those that never are
     * @throws IllegalArgumentException if there is no such tracing, in words for people; it then stays as it is
     */
    public void edit(String label, String field, UnaryOperator<Tracing> change) {
        if (history.isPresent() && history.get().edit(label, field, change.apply(history.get().now()))) {
            tell();
        }
    }

    /** {@return what “Undo” would take back} */
    public Optional<String> undoLabel() {
        return history.flatMap(History::undoLabel);
    }

    /** {@return what “Redo” would do again} */
    public Optional<String> redoLabel() {
        return history.flatMap(History::redoLabel);
    }

    /** Takes the last edit back. */
    public void undo() {
        if (history.isPresent() && history.get().undo()) {
            tell();
        }
    }

    /** Does the edit again that was taken back last. */
    public void redo() {
        if (history.isPresent() && history.get().redo()) {
            tell();
        }
    }

    /** Hears that a state was saved. */
    public void savedAs(Tracing written) {
        saved = Optional.of(written);
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

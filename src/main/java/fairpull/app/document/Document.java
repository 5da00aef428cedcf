package fairpull.app.document;

import fairpull.domain.plan.Plan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The test that a window shows: the one thing in it that changes. Views show it and send it edits; it holds one undo stack over all of
 * them. Not to be shared between threads.
 */
public final class Document {
    private final History<Plan> history;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Path> folder;
    private Optional<Plan> saved;
    private Optional<String> sealCode;
    private boolean amending;
    private boolean worthKeeping;

    private Document(Plan plan, Optional<Path> folder, Optional<Plan> saved, Optional<String> sealCode) {
        this.history = new History<>(Objects.requireNonNull(plan, "plan"));
        this.folder = folder;
        this.saved = saved;
        this.sealCode = sealCode;
    }

    /** {@return a test that is nowhere on disk yet} */
    public static Document unsaved(Plan plan) {
        return new Document(plan, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** {@return a test that was made for its user and is nowhere on disk yet: it is not given up unasked} */
    public static Document made(Plan plan) {
        Document document = unsaved(plan);
        document.worthKeeping = true;
        return document;
    }

    /** {@return a test as it lies in a folder} */
    public static Document of(Path folder, Plan plan, Optional<String> sealCode) {
        return new Document(plan, Optional.of(folder), Optional.of(plan), sealCode);
    }

    /** {@return a test with edits that were never saved, as they were found after a kill} */
    public static Document recovered(Optional<Path> folder, Optional<Plan> saved, Plan plan) {
        Document document = new Document(plan, folder, saved, Optional.empty());
        document.worthKeeping = true;
        return document;
    }

    /** {@return a sealed test with an amendment that was never written, as it was found after a kill} */
    public static Document recoveredAmendment(Path folder, Plan saved, String sealCode, Plan plan) {
        Document document = new Document(plan, Optional.of(folder), Optional.of(saved), Optional.of(sealCode));
        document.amending = true;
        return document;
    }

    /** {@return the plan as it stands} */
    public Plan plan() {
        return history.now();
    }

    /** {@return where it is kept, once it is} */
    public Optional<Path> folder() {
        return folder;
    }

    /** {@return the short code of its seal; empty while it is not sealed} */
    public Optional<String> sealCode() {
        return sealCode;
    }

    /** {@return whether the plan is sealed; then only amendments change it} */
    public boolean isSealed() {
        return sealCode.isPresent();
    }

    /** {@return whether nothing can be edited now: the plan is sealed and no amendment was begun} */
    public boolean isFixed() {
        return isSealed() && !amending;
    }

    /** {@return whether an amendment of the sealed plan is being made} */
    public boolean isAmending() {
        return amending;
    }

    /** Begins an amendment: the sealed plan can be edited until it is written with its reason or dropped. Nothing before it is undone. */
    public void beginAmendment() {
        if (isFixed()) {
            amending = true;
            restart(plan());
        }
    }

    /** Drops the amendment: the plan is again as it lies on disk. */
    public void dropAmendment() {
        if (amending) {
            amending = false;
            restart(saved.orElseThrow());
        }
    }

    /** {@return whether it differs from what lies on disk} */
    public boolean isChanged() {
        return !saved.equals(Optional.of(plan()));
    }

    /** {@return whether it came from nobody's hand: it was not edited, neither now nor before a kill, nor made for its user} */
    public boolean isUntouched() {
        return !worthKeeping && saved.isEmpty() && history.isEmpty();
    }

    /**
     * Changes the plan. An edit that changes nothing leaves no trace.
     *
     * @throws IllegalArgumentException if there is no such plan, in words for people; the document then stays as it is
     * @throws IllegalStateException if the plan is sealed and no amendment was begun
     */
    public void edit(Edit edit) {
        if (isFixed()) {
            throw new IllegalStateException("a sealed plan is changed by an amendment only");
        }
        if (history.edit(edit.label(), edit.field(), edit.change().apply(plan()))) {
            tell();
        }
    }

    /** Ends what is being typed: the next edit of the same field is undone on its own. */
    public void settle() {
        history.settle();
    }

    /** {@return what “Undo” would take back} */
    public Optional<String> undoLabel() {
        return isFixed() ? Optional.empty() : history.undoLabel();
    }

    /** {@return what “Redo” would do again} */
    public Optional<String> redoLabel() {
        return isFixed() ? Optional.empty() : history.redoLabel();
    }

    /** Takes the last edit back; nothing where there is none. */
    public void undo() {
        if (!isFixed() && history.undo()) {
            tell();
        }
    }

    /** Does the edit again that was taken back last; nothing where there is none. */
    public void redo() {
        if (!isFixed() && history.redo()) {
            tell();
        }
    }

    /** Hears that a plan now lies in a folder; what was edited meanwhile stays changed. */
    public void savedTo(Path where, Plan written) {
        folder = Optional.of(where);
        saved = Optional.of(written);
        tell();
    }

    /** Hears that the plan on disk was sealed. That plan is shown from now on: what was edited meanwhile is not under the seal. */
    public void sealedAs(String code) {
        sealCode = Optional.of(code);
        amending = false;
        restart(saved.orElse(plan()));
    }

    /** Hears that the plan on disk was amended: undo starts anew. */
    public void amendedTo(Plan amended) {
        saved = Optional.of(amended);
        amending = false;
        restart(amended);
    }

    /** Has {@code listener} called after every change, on the thread of the change. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    private void restart(Plan start) {
        history.restart(start);
        tell();
    }

    private void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}

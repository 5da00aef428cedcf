package fairpull.app.document;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * States of something that is edited, one after the other, so that edits can be taken back and done again.
 *
 * @param <S> an immutable state
 */
final class History<S> {
    private static final int DEEPEST = 1000;

    private final Deque<Step<S>> done = new ArrayDeque<>();
    private final Deque<Step<S>> undone = new ArrayDeque<>();
    private S now;
    private boolean settled = true;

    private record Step<S>(String label, String field, S before, S after) {
    }

    History(S start) {
        now = start;
    }

    S now() {
        return now;
    }

    /**
     * Goes on to another state; edits of the same field, where it is not empty, are taken back as one until {@link #settle}.
     *
     * @return whether it is another one
     */
    boolean edit(String label, String field, S next) {
        if (next.equals(now)) {
            return false;
        }
        undone.clear();
        Step<S> last = done.peek();
        boolean again = last != null && !settled && !field.isEmpty() && field.equals(last.field());
        S before = again ? done.pop().before() : now;
        if (!next.equals(before)) {
            done.push(new Step<>(label, field, before, next));
        }
        if (done.size() > DEEPEST) {
            done.removeLast();
        }
        settled = false;
        now = next;
        return true;
    }

    /** Ends what is being typed: the next edit of the same field is taken back on its own. */
    void settle() {
        settled = true;
    }

    /** Begins anew: nothing before it is taken back. */
    void restart(S start) {
        done.clear();
        undone.clear();
        settled = true;
        now = start;
    }

    /** {@return whether nothing can be taken back or done again} */
    boolean isEmpty() {
        return done.isEmpty() && undone.isEmpty();
    }

    Optional<String> undoLabel() {
        return Optional.ofNullable(done.peek()).map(Step::label);
    }

    Optional<String> redoLabel() {
        return Optional.ofNullable(undone.peek()).map(Step::label);
    }

    boolean undo() {
        Step<S> step = done.poll();
        if (step == null) {
            return false;
        }
        undone.push(step);
        settled = true;
        now = step.before();
        return true;
    }

    boolean redo() {
        Step<S> step = undone.poll();
        if (step == null) {
            return false;
        }
        done.push(step);
        settled = true;
        now = step.after();
        return true;
    }
}

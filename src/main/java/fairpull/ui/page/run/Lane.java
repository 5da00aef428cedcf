package fairpull.ui.page.run;

import fairpull.app.task.Job;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Work on the test's folder, beside the window's thread, one piece after the other in the order in which it was asked for. */
final class Lane {
    private final Consumer<Throwable> troubled;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean busy;

    /** A lane whose faults are told on the window's thread. */
    Lane(Consumer<Throwable> troubled) {
        this.troubled = troubled;
    }

    /** Does work when all before it is done; {@code then} hears of it. */
    <R> void ask(Job.OnDisk<R> work, Consumer<R> then) {
        ask(work, then, troubled);
    }

    /** The same with an ear of its own for faults. */
    <R> void ask(Job.OnDisk<R> work, Consumer<R> then, Consumer<Throwable> otherwise) {
        waiting.add(() -> Job.start(Job.onDisk(work), SwingUtilities::invokeLater, share -> { }, ended -> {
            busy = false;
            ended.tell(then, otherwise);
            next();
        }));
        next();
    }

    private void next() {
        if (!busy && !waiting.isEmpty()) {
            busy = true;
            waiting.poll().run();
        }
    }
}

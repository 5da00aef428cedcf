package fairpull.app.task;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Work of which only the last request matters, such as what a plan can see while it is typed: a new request stops the one before it.
 *
 * @param <R> what the work gives
 */
public final class Latest<R> {
    private final Executor asker;
    private Job<R> running;

    /** Makes one whose answers are heard through {@code asker}. */
    public Latest(Executor asker) {
        this.asker = asker;
    }

    /** Does the work beside the caller's thread; {@code whenEnded} hears of it unless another request came in between. */
    public void ask(Function<Progress, R> work, Consumer<Job.Ended<R>> whenEnded) {
        ask(work, share -> { }, whenEnded);
    }

    /** Does the work as well; {@code watcher} hears the share of it that is done, 0 … 1. */
    public void ask(Function<Progress, R> work, Consumer<Double> watcher, Consumer<Job.Ended<R>> whenEnded) {
        stop();
        running = Job.start(work, asker, watcher, whenEnded);
    }

    /** Stops what is being done, if anything is. */
    public void stop() {
        if (running != null) {
            running.cancel();
        }
    }
}

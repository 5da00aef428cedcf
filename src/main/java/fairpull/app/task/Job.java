package fairpull.app.task;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * One piece of long work beside the thread that asked for it: told how far it is, stopped when asked, its end told on the thread of the
 * asker.
 *
 * @param <R> what the work gives
 */
public final class Job<R> implements Progress {
    private final Executor asker;
    private final Consumer<Double> watcher;
    private volatile boolean cancelled;

    private Job(Executor asker, Consumer<Double> watcher) {
        this.asker = asker;
        this.watcher = watcher;
    }

    /** How a job ended: with a result, with a fault, or with neither because it was stopped. */
    public record Ended<R>(Optional<R> result, Optional<RuntimeException> fault) {
    }

    /**
     * Starts work on a thread of its own.
     *
     * @param work does it; is given the job, which tells it when to stop
     * @param asker runs what the asker is told, such as {@code SwingUtilities::invokeLater}
     * @param watcher hears the share that is done, 0 … 1, on the asker's thread
     * @param whenEnded hears how it ended, on the asker's thread; not called once the job was cancelled
     * @return the job
     */
    public static <R> Job<R> start(Function<Progress, R> work, Executor asker, Consumer<Double> watcher, Consumer<Ended<R>> whenEnded) {
        Job<R> job = new Job<>(asker, watcher);
        Thread thread = new Thread(() -> {
            Ended<R> ended = job.run(work);
            asker.execute(() -> {
                if (!job.cancelled) {
                    whenEnded.accept(ended);
                }
            });
        }, "fairpull-job");
        thread.setDaemon(true);
        thread.start();
        return job;
    }

    private Ended<R> run(Function<Progress, R> work) {
        try {
            return new Ended<>(Optional.of(work.apply(this)), Optional.empty());
        } catch (CancelledException stopped) {
            return new Ended<>(Optional.empty(), Optional.empty());
        } catch (RuntimeException fault) {
            return new Ended<>(Optional.empty(), Optional.of(fault));
        }
    }

    /** Asks the work to stop; nothing more is heard of it. */
    public void cancel() {
        cancelled = true;
    }

    @Override
    public void reached(int done, int all) {
        double share = all == 0 ? 1 : (double) done / all;
        asker.execute(() -> {
            if (!cancelled) {
                watcher.accept(share);
            }
        });
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }
}

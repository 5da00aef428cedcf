package fairpull.app.task;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
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

    /**
     * How a job ended: with a result, with a fault, or with neither because it was stopped. Whoever asks says what becomes of both, so that
     * no fault is passed over.
     *
     * @param <R> what the work gives
     */
    public static final class Ended<R> {
        private final R result;
        private final Throwable fault;

        private Ended(R result, Throwable fault) {
            this.result = result;
            this.fault = fault;
        }

        /** Gives the result to {@code then}, or the fault to {@code failed}. */
        public void tell(Consumer<? super R> then, Consumer<? super Throwable> failed) {
            if (fault != null) {
                failed.accept(fault);
            } else if (result != null) {
                then.accept(result);
            }
        }
    }

    /**
     * Work on files.
     *
     * @param <R> what it gives
     */
    public interface OnDisk<R> {
        /** Does it. */
        R run() throws IOException;
    }

    /**
     * Work on files that tells how far it is, and stops when asked.
     *
     * @param <R> what it gives
     */
    public interface WatchedOnDisk<R> {
        /** Does it. */
        R run(Progress progress) throws IOException;
    }

    /** {@return work on files as work of a job; a disk that fails is a fault of it, an {@link UncheckedIOException}} */
    public static <R> Function<Progress, R> onDisk(OnDisk<R> work) {
        return onDisk(progress -> work.run());
    }

    /** {@return the same of work that tells how far it is} */
    public static <R> Function<Progress, R> onDisk(WatchedOnDisk<R> work) {
        return progress -> {
            try {
                return work.run(progress);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        };
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
            return new Ended<>(Objects.requireNonNull(work.apply(this), "work gives something"), null);
        } catch (CancelledException stopped) {
            return new Ended<>(null, null);
        } catch (Throwable fault) { // errors too: whoever waits for the end must hear of it
            return new Ended<>(null, fault);
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

package fairpull.app.task;

import java.io.IOException;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Keeps something on disk as it changes, beside the thread on which it changes: requests are carried out in their order, one after the
 * other, and one that still waits gives way to a newer one. The program does not end before the last of them.
 */
public final class Keeper {
    private static final ScheduledThreadPoolExecutor WRITER = new ScheduledThreadPoolExecutor(1,
            work -> new Thread(work, "fairpull-keeper"));

    static {
        // a thread that is no daemon is waited for at the end; one that has nothing to do must not be
        WRITER.setKeepAliveTime(20, TimeUnit.MILLISECONDS);
        WRITER.allowCoreThreadTimeOut(true);
        WRITER.setRemoveOnCancelPolicy(true);
    }

    private final long delayMs;
    private final Executor asker;
    private Future<?> waiting;

    /** Work on files. */
    public interface Work {
        /** Does it. */
        void run() throws IOException;
    }

    /**
     * A keeper.
     *
     * @param delayMs how long a request waits for a newer one
     * @param asker runs what the asker is told, such as {@code SwingUtilities::invokeLater}
     */
    public Keeper(long delayMs, Executor asker) {
        this.delayMs = delayMs;
        this.asker = asker;
    }

    /** Asks for work in place of what still waits; {@code ended} hears of its end, or of its fault, on the asker's thread. */
    public void ask(Work work, Runnable ended, Consumer<Throwable> failed) {
        if (waiting != null) {
            waiting.cancel(false);
        }
        waiting = WRITER.schedule(() -> run(work, ended, failed), delayMs, TimeUnit.MILLISECONDS);
    }

    private void run(Work work, Runnable ended, Consumer<Throwable> failed) {
        try {
            work.run();
            asker.execute(ended);
        } catch (Throwable fault) { // errors too: whoever believes something to be kept must hear that it is not
            asker.execute(() -> failed.accept(fault));
        }
    }
}

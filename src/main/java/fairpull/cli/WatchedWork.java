package fairpull.cli;

import fairpull.app.task.Progress;
import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Long work of a verb: after a second it says on a terminal how far it is, and an interrupt (Ctrl-C) stops it, waiting until the program
 * has said so.
 */
final class WatchedWork implements Progress {
    private static final long SAY_AFTER_NANOSECONDS = 1_000_000_000L;
    private static final long SAY_EVERY_NANOSECONDS = 200_000_000L;
    private static final long WAIT_AT_MOST_SECONDS = 5;

    private final PrintWriter err;
    private final boolean onTerminal;
    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread onInterrupt = new Thread(this::cancelAndWait, "fairpull-interrupt");
    private final long begun = System.nanoTime();
    private volatile boolean cancelled;
    private long said;
    private boolean lineOpen;

    WatchedWork(PrintWriter err, boolean onTerminal) {
        this.err = err;
        this.onTerminal = onTerminal;
        Runtime.getRuntime().addShutdownHook(onInterrupt);
    }

    private void cancelAndWait() {
        cancelled = true;
        try {
            ended.await(WAIT_AT_MOST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public synchronized void reached(int done, int all) {
        long now = System.nanoTime();
        if (onTerminal && now - begun > SAY_AFTER_NANOSECONDS && now - said > SAY_EVERY_NANOSECONDS) {
            err.print("\r" + 100L * done / all + " %");
            err.flush();
            said = now;
            lineOpen = true;
        }
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }

    /** Takes the line of progress away, so that what follows stands alone. */
    synchronized void clearLine() {
        if (lineOpen) {
            err.print("\r      \r");
            err.flush();
            lineOpen = false;
        }
    }

    /** The program has said all that it has to say. */
    void end() {
        ended.countDown();
        if (!cancelled) {
            try {
                Runtime.getRuntime().removeShutdownHook(onInterrupt);
            } catch (IllegalStateException shuttingDown) {
                cancelled = true;
            }
        }
    }
}

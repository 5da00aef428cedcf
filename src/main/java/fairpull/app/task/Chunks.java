package fairpull.app.task;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;

/**
 * Runs independent chunks of work on several threads and gives back their results in the order of the chunks, so that the answer does
 * not depend on how many threads there were.
 */
public final class Chunks {
    private static final long LONGEST_END_S = 10;

    private Chunks() {
    }

    /** {@return how many threads are worth having on this machine} */
    public static int cores() {
        return Runtime.getRuntime().availableProcessors();
    }

    /**
     * Runs all chunks.
     *
     * @param chunks how many there are
     * @param work does one of them, by its number; called from several threads at once
     * @param threads how many threads, 1 or more
     * @param progress hears of every chunk done, and may stop the work
     * @return the results in the order of the chunks
     * @throws CancelledException if the progress, or an interrupt of the calling thread, stopped the work
     */
    public static <R> List<R> run(int chunks, IntFunction<R> work, int threads, Progress progress) {
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger();
        List<R> results = new ArrayList<>(Collections.nCopies(chunks, null));
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, chunks)), Chunks::daemon);
        try {
            List<Future<?>> workers = new ArrayList<>();
            for (int worker = 0; worker < Math.min(threads, chunks); worker++) {
                workers.add(pool.submit(() -> {
                    for (int chunk = next.getAndIncrement(); chunk < chunks; chunk = next.getAndIncrement()) {
                        if (progress.isCancelled() || Thread.currentThread().isInterrupted()) {
                            return;
                        }
                        results.set(chunk, work.apply(chunk));
                        progress.reached(done.incrementAndGet(), chunks);
                    }
                }));
            }
            for (Future<?> worker : workers) {
                worker.get();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException failed) {
            endOthers(pool);
            throw failed.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(failed.getCause());
        } finally {
            pool.shutdownNow();
        }
        if (done.get() < chunks) {
            throw new CancelledException(done.get(), chunks);
        }
        return results;
    }

    /** Whoever tidies up after the one that failed must not be overtaken by another one. */
    private static void endOthers(ExecutorService pool) {
        pool.shutdownNow();
        try {
            pool.awaitTermination(LONGEST_END_S, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** A thread that does not keep the program from ending. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "fairpull-work");
        thread.setDaemon(true);
        return thread;
    }
}

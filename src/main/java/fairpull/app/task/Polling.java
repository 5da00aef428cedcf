package fairpull.app.task;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Looks at a watched folder about once a second on a thread of its own, until it is stopped. */
public final class Polling {
    private final FolderWatch watch;
    private volatile boolean stopped;

    private Polling(FolderWatch watch) {
        this.watch = watch;
    }

    /**
     * Starts looking.
     *
     * @param watch the folder
     * @param everyMs the time between two looks
     * @param asker runs what is told
     * @param found hears of files that became complete
     * @param trouble hears, in words, that the folder cannot be read, and an empty text when it can again
     * @return the watch, to be stopped
     */
    public static Polling start(FolderWatch watch, int everyMs, Executor asker, Consumer<List<Path>> found, Consumer<String> trouble) {
        Polling polling = new Polling(watch);
        Thread thread = new Thread(() -> polling.run(everyMs, asker, found, trouble), "fairpull-watch");
        thread.setDaemon(true);
        thread.start();
        return polling;
    }

    private void run(int everyMs, Executor asker, Consumer<List<Path>> found, Consumer<String> trouble) {
        boolean lost = false;
        while (!stopped) {
            try {
                List<Path> complete = watch.poll();
                if (lost || !complete.isEmpty()) {
                    boolean back = lost;
                    asker.execute(() -> tell(back, complete, found, trouble));
                }
                lost = false;
            } catch (IOException gone) {
                if (!lost) {
                    asker.execute(() -> trouble.accept(String.valueOf(gone.getMessage())));
                }
                lost = true;
            }
            try {
                TimeUnit.MILLISECONDS.sleep(everyMs);
            } catch (InterruptedException ended) {
                return;
            }
        }
    }

    private void tell(boolean back, List<Path> complete, Consumer<List<Path>> found, Consumer<String> trouble) {
        if (stopped) {
            return;
        }
        if (back) {
            trouble.accept("");
        }
        if (!complete.isEmpty()) {
            found.accept(complete);
        }
    }

    /** Stops looking; nothing more is heard of it. */
    public void stop() {
        stopped = true;
    }
}

package fairpull.io.folder;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * One writer at a time in a test. A lock on a file holds off other processes, but not other threads of this one: there it is a fault to ask
 * for it twice.
 */
final class Turn {
    private static final Map<Path, Object> TESTS = new HashMap<>();

    private Turn() {
    }

    /**
     * Work on the files of a test.
     *
     * @param <R> what it gives
     */
    interface Work<R> {
        R run() throws IOException;
    }

    /** Does work while no other thread writes into the test of a folder; {@return what it gave}. Within such work it may be asked again. */
    static <R> R in(Path folder, Work<R> work) throws IOException {
        synchronized (of(folder.toRealPath())) {
            return work.run();
        }
    }

    private static synchronized Object of(Path test) {
        return TESTS.computeIfAbsent(test, folder -> new Object());
    }
}

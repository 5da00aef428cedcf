package fairpull.ui;

import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** Waits for what the window does beside its own thread. */
public final class Waiting {
    private static final int LONGEST_MS = 20_000;
    private static final int STEP_MS = 10;
    /** A job may end between two looks, and what it tells may begin the next: longer chains of such jobs than this there are none. */
    private static final int CALM_ROUNDS = 8;
    private static final Set<String> WORKING = Set.of("fairpull-job", "fairpull-keeper");

    private Waiting() {
    }

    /** Waits until something holds on the window's thread; fails after twenty seconds. */
    public static void until(BooleanSupplier holds) {
        boolean[] held = new boolean[1];
        for (int waited = 0; waited < LONGEST_MS; waited += STEP_MS) {
            onWindowThread(() -> held[0] = holds.getAsBoolean());
            if (held[0]) {
                return;
            }
            sleep();
        }
        throw new AssertionError("did not come about within " + LONGEST_MS + " ms");
    }

    /** Waits until no job of the window runs any more, what they told has been heard, and it has begun nothing more. */
    public static void forQuiet() {
        int calm = 0;
        for (int waited = 0; waited < LONGEST_MS; waited += STEP_MS) {
            while (calm < CALM_ROUNDS && isQuiet()) {
                calm++;
            }
            if (calm == CALM_ROUNDS) {
                return;
            }
            calm = 0;
            sleep();
        }
        throw new AssertionError("the window is still at work after " + LONGEST_MS + " ms");
    }

    private static boolean isQuiet() {
        onWindowThread(() -> { });
        return threads().noneMatch(WORKING::contains);
    }

    /** {@return the names of all threads; unlike the stack traces they hold one from the moment it is started, before it has a stack} */
    public static Stream<String> threads() {
        ThreadGroup all = Thread.currentThread().getThreadGroup();
        while (all.getParent() != null) {
            all = all.getParent();
        }
        Thread[] found = new Thread[2 * all.activeCount() + 16];
        return Stream.of(Arrays.copyOf(found, all.enumerate(found))).map(Thread::getName);
    }

    private static void sleep() {
        try {
            Thread.sleep(STEP_MS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Does something on the window's thread and waits for it. */
    public static void onWindowThread(Runnable work) {
        try {
            SwingUtilities.invokeAndWait(work);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException failed) {
            throw new AssertionError(failed.getCause());
        }
    }
}

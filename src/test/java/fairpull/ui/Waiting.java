package fairpull.ui;

import java.lang.reflect.InvocationTargetException;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javax.swing.SwingUtilities;

/** Waits for what the window does beside its own thread. */
public final class Waiting {
    private static final int LONGEST_MS = 20_000;
    private static final int STEP_MS = 10;
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

    /** Waits until no job of the window runs any more and what they told has been heard. */
    public static void forQuiet() {
        for (int waited = 0; waited < LONGEST_MS; waited += STEP_MS) {
            // what was put off until later may begin work of its own
            onWindowThread(() -> { });
            boolean working = isWorking();
            onWindowThread(() -> { });
            // what one job told may have started the next
            if (!working && !isWorking()) {
                onWindowThread(() -> { });
                return;
            }
            sleep();
        }
        throw new AssertionError("the window is still at work after " + LONGEST_MS + " ms");
    }

    private static boolean isWorking() {
        return Thread.getAllStackTraces().keySet().stream().map(Thread::getName).anyMatch(WORKING::contains);
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

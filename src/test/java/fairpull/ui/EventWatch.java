package fairpull.ui;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Watches how long the window's thread is held by each event. On a machine with other work the wall clock says more about the others than
 * about us; what counts here is the time of the processor that the thread itself took and the time for which it waited, for a lock or for
 * another thread. What it does not see is a slow disk read on this thread.
 */
final class EventWatch extends EventQueue {
    private static final double NS_A_MS = 1e6;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<Held> events = new ArrayList<>();
    /** What events within the one that is being dispatched took, so that a dialogue does not count for its button. */
    private double within;

    /**
     * An event and what it took.
     *
     * @param event what it was
     * @param heldMs processor time and waiting of the thread
     * @param wallMs by the clock on the wall
     */
    record Held(String event, double heldMs, double wallMs) {
    }

    /** Begins to watch. */
    static EventWatch begun() {
        EventWatch watch = new EventWatch();
        watch.threads.setThreadContentionMonitoringEnabled(true);
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch);
        return watch;
    }

    /** Ends the watch. */
    void end() {
        pop();
    }

    /** The robot that drives a test waits for the display on this thread; that is none of the program's. */
    private static boolean isOfRobot(AWTEvent event) {
        return event.getClass().getName().startsWith("sun.awt.SunToolkit$");
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        if (isOfRobot(event)) {
            super.dispatchEvent(event);
            return;
        }
        double outside = within;
        within = 0;
        double before = heldMs();
        long start = System.nanoTime();
        try {
            super.dispatchEvent(event);
        } finally {
            double held = heldMs() - before;
            note(new Held(event.getClass().getSimpleName() + " " + event.paramString() + " at " + event.getSource().getClass().getSimpleName(),
                    held - within, (System.nanoTime() - start) / NS_A_MS));
            within = outside + held;
        }
    }

    private double heldMs() {
        ThreadInfo now = threads.getThreadInfo(Thread.currentThread().getId());
        return threads.getCurrentThreadCpuTime() / NS_A_MS + now.getBlockedTime() + now.getWaitedTime();
    }

    private synchronized void note(Held held) {
        events.add(held);
    }

    /** {@return what has been noted since the last time, the longest first} */
    synchronized List<Held> taken() {
        List<Held> taken = events.stream().sorted(Comparator.comparingDouble(Held::heldMs).reversed()).toList();
        events.clear();
        return taken;
    }
}

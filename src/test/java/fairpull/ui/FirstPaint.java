package fairpull.ui;

import fairpull.Fairpull;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.PaintEvent;
import java.lang.management.ManagementFactory;

/** Starts the program as its main does, says when its window was first painted, and ends. A process of {@link StartTime}. */
final class FirstPaint {
    private FirstPaint() {
    }

    /** Starts it. */
    public static void main(String[] arguments) {
        say();
        Fairpull.main(arguments);
    }

    /** Says when the first window was painted, in milliseconds since the start of the process. */
    static void say() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(new EventQueue() {
            @Override
            protected void dispatchEvent(AWTEvent event) {
                super.dispatchEvent(event);
                if (event instanceof PaintEvent && event.getSource() instanceof Window) {
                    Toolkit.getDefaultToolkit().sync();
                    long started = ManagementFactory.getRuntimeMXBean().getStartTime();
                    System.out.println("painted after " + (System.currentTimeMillis() - started) + " ms");
                    System.exit(0);
                }
            }
        });
    }
}

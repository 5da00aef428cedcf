package fairpull.ui;

import fairpull.app.task.Progress;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.pulls.ImportPulls;
import fairpull.app.usecase.pulls.PreparedImport;
import fairpull.app.usecase.typing.StatedCorrection;
import fairpull.domain.plan.Correction;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JComponent;

/**
 * How long many long pulls take from files to the page: {@code PullsTime PULLS ROWS}, five hundred of ten thousand rows unless said
 * otherwise. Import with its checks (the bar is ten seconds), then drawing of the overlay (fifty milliseconds on the window's thread).
 */
public final class PullsTime {
    private static final double NS_A_MS = 1e6;
    private static final int PAINTS = 21;

    private PullsTime() {
    }

    /** Measures and prints. */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("java.awt.headless", "true");
        int pulls = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 500;
        int rows = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10_000;
        Path folder = Files.createTempDirectory("pulls-time");
        List<Path> files = LongDay.exports(folder, pulls / 5, rows);
        Path test = LongDay.planned(folder, pulls / 5);
        ImportPulls.Request request = new ImportPulls.Request(test, files, Optional.empty(), OptionalInt.empty(), false,
                new ImportPulls.Reading(List.of(), StatedCorrection.of(Correction.NONE), Optional.empty(), false, Optional.empty()),
                Optional.empty());
        say("files written", System.nanoTime());
        long start = System.nanoTime();
        PreparedImport prepared = ImportPulls.prepare(request, Progress.none());
        say("read, checked and measured", start);
        long taking = System.nanoTime();
        int taken = prepared.take(OffsetDateTime.now(), Progress.none()).size();
        say("taken", taking);
        say("import of " + taken + " pulls of " + rows + " rows as a whole", start);
        overlay(folder, test);
        System.exit(0);
    }

    /** Opens the page and paints its chart as the window's thread does; then zooms, and waits for the sharp picture. */
    private static void overlay(Path folder, Path test) throws Exception {
        Hand hand = Hand.on(KeepTest.open(test), folder.resolve("settings"));
        long opening = System.nanoTime();
        hand.go("page.pulls");
        hand.settle();
        say("page of pulls with its curves read", opening);
        JComponent chart = hand.find("overlay.chart", JComponent.class);
        BufferedImage image = new BufferedImage(chart.getWidth(), chart.getHeight(), BufferedImage.TYPE_INT_RGB);
        double[] paints = new double[PAINTS];
        for (int paint = 0; paint < PAINTS; paint++) {
            hand.point("overlay.chart", 200 + 10 * paint, 100);
            int place = paint;
            Waiting.onWindowThread(() -> {
                long start = System.nanoTime();
                chart.paint(image.createGraphics());
                paints[place] = (System.nanoTime() - start) / NS_A_MS;
            });
        }
        Arrays.sort(paints);
        System.out.printf(Locale.ROOT, "redraw with crosshair on the window's thread: median %.1f ms, longest %.1f ms of %d%n",
                paints[PAINTS / 2], paints[PAINTS - 1], PAINTS);
        long zooming = System.nanoTime();
        hand.key("overlay.chart", "PLUS");
        say("zoom until the picture is sharp, beside the window's thread", zooming);
    }

    private static void say(String what, long start) {
        System.out.printf(Locale.ROOT, "%s: %.0f ms (load of the machine %.1f; processor time of this process so far %.1f s)%n", what,
                (System.nanoTime() - start) / NS_A_MS, ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                ProcessHandle.current().info().totalCpuDuration().map(spent -> spent.toMillis() / 1000.0).orElse(Double.NaN));
    }
}

package fairpull.ui;

import com.sun.management.OperatingSystemMXBean;
import fairpull.app.document.Settings;
import fairpull.app.task.Progress;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.shelf.ListTests;
import fairpull.ui.frame.ShelfBoard;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTable;

/**
 * How long a list of tests takes beside judging each of them one after the other, and how long the window's thread is held by it:
 * {@code ShelfTime TESTS}. One half are copies of the invented tests with exports, the other has typed values.
 */
public final class ShelfTime {
    private static final double NS_A_S = 1e9;

    private ShelfTime() {
    }

    /** Measures. */
    public static void main(String[] arguments) throws Exception {
        System.setProperty("java.awt.headless", "true");
        int tests = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
        Path folder = made(tests);
        List<Path> all = ListTests.find(folder, Progress.none()).tests();
        judge(all.subList(0, Math.min(all.size(), 20)));
        double start = processorS();
        double judged = judge(all);
        double judging = processorS() - start;
        ListTests listing = new ListTests();
        double listed = list(listing, folder);
        double listingS = processorS() - start - judging;
        double again = list(listing, folder);
        System.out.printf("%d tests: judged one after the other %.2f s, listed %.2f s (%.2f of it), listed again %.3f s%n", all.size(), judged,
                listed, listed / judged, again);
        System.out.printf("On a busy machine rather the processor's time: judged %.2f s, listed %.2f s (%.2f of it)%n", judging, listingS,
                listingS / judging);
        window(folder, all.size());
        System.exit(0);
    }

    private static Path made(int tests) throws IOException {
        Path folder = Files.createTempDirectory("shelf");
        for (int place = 0; place < tests; place++) {
            Path into = Files.createDirectories(folder.resolve("day " + place / 10));
            if (place % 2 == 0) {
                CopiedTest.of(Path.of(place % 4 == 0 ? "plans/electric-pump" : "plans/panel-filter"), into.resolve("test " + place));
            } else {
                InventedTests.make(into, place, InventedTests.Kind.COMPLETE);
            }
        }
        return folder;
    }

    private static double processorS() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / NS_A_S;
    }

    private static double judge(List<Path> tests) throws IOException {
        long start = System.nanoTime();
        for (Path test : tests) {
            JudgeFolder.judge(test);
        }
        return (System.nanoTime() - start) / NS_A_S;
    }

    private static double list(ListTests listing, Path folder) throws IOException {
        long start = System.nanoTime();
        listing.list(ListTests.find(folder, Progress.none()), test -> { }, Progress.none());
        return (System.nanoTime() - start) / NS_A_S;
    }

    private static void window(Path folder, int tests) {
        ShelfBoard[] board = new ShelfBoard[1];
        EventWatch watch = EventWatch.begun();
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            board[0] = OffScreen.laidOut(new ShelfBoard(Settings.in(folder.resolve("none")), test -> { }, then -> { }), 1280, 800);
            OffScreen.picture(board[0], 1280, 800, 1);
        });
        Waiting.forQuiet();
        watch.taken();
        Waiting.onWindowThread(() -> board[0].pane().look(folder));
        for (int look = 0; look < 3; look++) {
            Waiting.onWindowThread(() -> OffScreen.picture(board[0], 1280, 800, 1));
            watch.taken();
        }
        Waiting.forQuiet();
        List<EventWatch.Held> held = watch.taken();
        int rows = Hand.within(board[0]).filter(JTable.class::isInstance).map(JTable.class::cast).mapToInt(JTable::getRowCount).sum();
        System.out.printf("In the window %d of %d rows; longest of %d events: %.1f ms%n", rows, tests, held.size(), held.get(0).heldMs());
    }
}

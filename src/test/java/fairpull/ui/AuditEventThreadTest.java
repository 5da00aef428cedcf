package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.plan.Part;
import fairpull.ui.frame.AuditPane;
import fairpull.ui.page.audit.CurvesPage;
import fairpull.ui.page.tracing.TracedExample;
import fairpull.ui.page.tracing.TracingPane;
import java.awt.datatransfer.StringSelection;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The window of an audit answers at once on all its pages: typing, values by the hundred, a picture of twelve million pixels, one that is traced, its curves taken and
 * drawn, the standing in full. It measures time, so it runs only when asked.
 */
@Tag("window")
@Tag("slow")
class AuditEventThreadTest {
    private static final double LONGEST_MS = 50;
    private static final int ROUNDS = 5;
    private static final int VALUES = 200;
    /** From the picture to its curves: four marks, two lines, and taking them. */
    private static final int CLICKS = 7;

    @TempDir
    private Path home;

    @Test
    void noEventHoldsTheWindowOfAnAuditLongerThanFiftyMilliseconds() throws IOException {
        Path file = Files.copy(Path.of("demo-data/published/silent.json"), home.resolve("silent.json"));
        Path picture = TracedExample.picture(Files.createDirectories(home.resolve("pictures")));
        Path large = TracedExample.large(home.resolve("pictures"));
        try (OnScreen screen = OnScreen.started(home.resolve("settings"), Optional.of(file))) {
            EventWatch watch = EventWatch.begun();
            List<EventWatch.Held> last = List.of();
            for (int round = 1; round <= ROUNDS; round++) {
                publish(screen, round);
                procedure(screen, round);
                trace(screen, large, picture);
                screen.click("page.standing");
                screen.settle();
                screen.click("page.curves");
                screen.click("audit.taken.remove.0");
                screen.click("page.published");
                screen.settle();
                last = watch.taken();
                EventThreadTest.say("audit " + round, last);
            }
            watch.end();
            assertThat(last).hasSizeGreaterThan(200);
            assertThat(last.get(0).heldMs()).as(last.get(0).toString()).isLessThan(LONGEST_MS);
        }
    }

    private static void publish(OnScreen screen, int round) {
        screen.type("audit.figure.after.0", 216 + round + " hp");
        screen.type("audit.claim.words.0", "round " + round);
        screen.type("audit.claim.gain.0", round + " hp");
        screen.click("audit.figures.add");
        screen.type("audit.figure.before.1", "200.5 hp");
        screen.type("audit.figure.after.1", "204.5 hp");
        screen.choosePlace("audit.values.figure", 1);
        JTable table = screen.find("audit.values", JTable.class);
        String copied = IntStream.range(0, VALUES).mapToObj(row -> "20" + row % 7 + ".5\t20" + row % 9 + ".5")
                .collect(Collectors.joining("\n"));
        Waiting.onWindowThread(() -> table.getTransferHandler().importData(new TransferHandler.TransferSupport(table,
                new StringSelection(copied))));
        screen.settle();
        Waiting.onWindowThread(() -> table.setValueAt("203.1", 3, 1));
        screen.choosePlace("audit.values.each", 1 + round % 3);
        screen.choosePlace("audit.values.paired", 1);
        screen.click("audit.figures.remove.1");
        screen.type("audit.title", "round " + round);
    }

    private static void procedure(OnScreen screen, int round) {
        screen.click("page.procedure");
        screen.choosePlace("audit.quoted.before", 1 + round % 2);
        screen.type("audit.pulls.before", String.valueOf(2 + round));
        screen.choosePlace("audit.rig", round % 3);
        screen.type("audit.order", round % 2 == 0 ? "ABA" : "ABBA");
        screen.choosePlace("audit.correction.before", round % 3);
        screen.type("audit.scatter.pull", "0." + round + " %");
        screen.settle();
    }

    private static void trace(OnScreen screen, Path large, Path picture) {
        screen.click("page.curves");
        AuditPane audit = screen.find("audit", AuditPane.class);
        TracingPane pane = ((CurvesPage) audit.pages().get(2)).tracing();
        Waiting.onWindowThread(() -> pane.open(large));
        screen.settle();
        Waiting.onWindowThread(() -> pane.open(picture));
        screen.settle();
        screen.find("tracing.picture", JComponent.class);
        screen.settle();
        int before = screen.actions();
        mark(screen, pane, "tracing.x.first", true, 2000, "rpm");
        mark(screen, pane, "tracing.x.second", true, 6000, "rpm");
        mark(screen, pane, "tracing.y.first", false, 0, "kW");
        mark(screen, pane, "tracing.y.second", false, 200, "kW");
        screen.clickIn("tracing.picture", OnScreen.got(() -> TracedExample.line(pane, Part.A)));
        screen.clickIn("tracing.picture", OnScreen.got(() -> TracedExample.line(pane, Part.B)));
        screen.click("tracing.take");
        assertThat(screen.actions() - before).as("clicks from the picture to its curves").isEqualTo(CLICKS);
        screen.find("audit.taken.chart.0", JComponent.class);
        screen.settle();
    }

    private static void mark(OnScreen screen, TracingPane pane, String key, boolean across, int value, String unit) {
        screen.clickIn("tracing.picture", OnScreen.got(() -> TracedExample.mark(pane, across, value)));
        screen.typeOn(key + ".value", value + " " + unit);
    }
}

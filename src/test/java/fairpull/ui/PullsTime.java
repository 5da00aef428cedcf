package fairpull.ui;

import fairpull.app.task.Progress;
import fairpull.app.usecase.ImportPulls;
import fairpull.app.usecase.PreparedImport;
import fairpull.app.usecase.StatedCorrection;
import fairpull.domain.plan.Correction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long many long pulls take from files to the page: {@code PullsTime PULLS ROWS}, five hundred of ten thousand rows unless said
 * otherwise. Import with its checks (the bar is ten seconds), then drawing of the overlay (fifty milliseconds on the window's thread).
 */
public final class PullsTime {
    private static final double NS_A_MS = 1e6;

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
        long start = System.nanoTime();
        PreparedImport prepared = ImportPulls.prepare(request, Progress.none());
        say("read, checked and measured", start);
        long taking = System.nanoTime();
        int taken = prepared.take(OffsetDateTime.now(), Progress.none()).size();
        say("taken", taking);
        say("import of " + taken + " pulls of " + rows + " rows as a whole", start);
        System.exit(0);
    }

    private static void say(String what, long start) {
        System.out.printf(Locale.ROOT, "%s: %.0f ms%n", what, (System.nanoTime() - start) / NS_A_MS);
    }
}

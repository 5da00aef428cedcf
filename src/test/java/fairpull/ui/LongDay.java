package fairpull.ui;

import fairpull.cli.CommandLineProgram;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** A test of many long pulls, all invented: sealed, with an export for each pull beside it. */
final class LongDay {
    private static final double SECONDS = 10;

    private LongDay() {
    }

    /** Makes the test A/B/A/B/A with so many pulls an install, its plan sealed; {@return its folder}. */
    static Path planned(Path folder, int pullsAnInstall) {
        Path test = folder.resolve("test");
        run(List.of("new", test.toString(), "--part-a", "old", "--part-b", "new", "--measure", "mean power 3000-6500 rpm in hp",
                "--expected", "190hp", "--worthwhile", "3hp", "--sequence", "ABABA", "--pulls", Integer.toString(pullsAnInstall),
                "--pull-scatter", "0.6%", "--refit-scatter", "0.9hp", "--refit-df", "11"));
        run(List.of("seal", test.toString()));
        return test;
    }

    private static void run(List<String> step) {
        StringWriter said = new StringWriter();
        int status = new CommandLineProgram(new PrintWriter(said, true), new PrintWriter(said, true), Clock.systemDefaultZone())
                .runVerb(step);
        if (status != 0) {
            throw new IllegalStateException(said.toString());
        }
    }

    /** Writes an export for every pull of so many rows; {@return the files in the order of the day}. */
    static List<Path> exports(Path folder, int pullsAnInstall, int rows) throws IOException {
        SplittableRandom random = new SplittableRandom(6);
        Path exports = Files.createDirectories(folder.resolve("exports"));
        List<Path> files = new ArrayList<>();
        for (String install : List.of("A1", "B1", "A2", "B2", "A3")) {
            for (int pull = 1; pull <= pullsAnInstall; pull++) {
                Path file = exports.resolve(install + "-" + pull + ".csv");
                write(file, rows, install.startsWith("B") ? 193 : 190, random);
                files.add(file);
            }
        }
        return files;
    }

    private static void write(Path file, int rows, double level, SplittableRandom random) throws IOException {
        double own = level + random.nextGaussian();
        try (BufferedWriter writer = Files.newBufferedWriter(file)) {
            writer.write("Time (s),Engine speed (rpm),Power (hp),Torque (Nm),Throttle (%)\n");
            for (int row = 0; row < rows; row++) {
                double share = (double) row / (rows - 1);
                double rpm = 2500 + 4500 * share + random.nextGaussian();
                double power = own * (1 - 0.9 * (share - 0.75) * (share - 0.75)) + 0.4 * random.nextGaussian();
                double torque = power * 745.69987 / (rpm * Math.PI / 30);
                writer.write(String.format(Locale.ROOT, "%.3f,%.1f,%.2f,%.2f,100%n", share * SECONDS, rpm, power, torque));
            }
        }
    }
}

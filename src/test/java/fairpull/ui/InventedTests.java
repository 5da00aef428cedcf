package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.cli.CommandLineProgram;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/** A shop's folder of tests, all invented: made by the verbs, with typed values out of a seeded generator. */
public final class InventedTests {
    private static final List<String> PARTS = List.of("panel filter", "exhaust manifold", "intake pipe", "electric fan", "cooler core",
            "ignition map", "air box", "pulley", "throttle body", "thermostat");
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final String MEASURE = "wheel power";

    private InventedTests() {
    }

    /** What one of them is to be. */
    public enum Kind {
        PLANNED, SEALED, UNDER_WAY, COMPLETE, BROKEN
    }

    /** {@return what a command prints} */
    public static String run(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLineProgram(new PrintWriter(out, true), new PrintWriter(err, true),
                Clock.fixed(Instant.parse("2026-01-01T08:00:00Z"), ZoneOffset.UTC)).runVerb(Stream.of(words).map(Object::toString).toList());
        assertThat(status).as("%s: %s", List.of(words), err).isZero();
        return out.toString();
    }

    /** Makes a number of tests below a folder, in folders by quarter; of ten one is planned, one sealed, one under way, the last broken. */
    public static void make(Path folder, int number) throws IOException {
        for (int place = 0; place < number; place++) {
            int kind = place % 10;
            make(folder.resolve("quarter " + (1 + place / Math.max(1, number / 4))), place, kind == 7 ? Kind.PLANNED : kind == 8 ? Kind.SEALED
                    : kind == 9 ? place + 10 >= number ? Kind.BROKEN : Kind.UNDER_WAY : Kind.COMPLETE);
        }
    }

    /** Makes one test; its number is its seed and its day. */
    public static Path make(Path folder, int number, Kind kind) throws IOException {
        Random random = new Random(1000L + number);
        String part = PARTS.get(number % PARTS.size());
        Path test = folder.resolve(String.format(Locale.ROOT, "%03d %s", number, part));
        run("new", test, "--title", "Invented: " + part + ", car " + (char) ('A' + number % 26), "--part-a", "standard " + part, "--part-b",
                "other " + part, "--measure", "typed " + MEASURE + " in hp", "--expected", "192hp", "--worthwhile", "3hp", "--sequence", "ABABA",
                "--pulls", "3", "--warm-ups", "1", "--rig-name", "rollers 1", "--refit-scatter", "0.9hp", "--refit-df", "11",
                "--pull-scatter", "0.6%");
        if (kind == Kind.BROKEN) {
            Files.writeString(test.resolve("plan.json"), "{\"schemaVersion\": 1, \"title\": ");
        }
        if (kind == Kind.PLANNED || kind == Kind.BROKEN) {
            return test;
        }
        run("seal", test);
        if (kind != Kind.SEALED) {
            Path notebook = Files.createTempFile("notebook", ".csv");
            Files.write(notebook, pulls(random, number, kind == Kind.COMPLETE ? 15 : 7));
            run("note", test, "--table", notebook);
            Files.delete(notebook);
        }
        return test;
    }

    private static List<String> pulls(Random random, int number, int most) {
        List<String> lines = new ArrayList<>(List.of("pull,time," + MEASURE));
        double gain = List.of(0.0, 4.5, -3.5, 1.5, 8.0, 0.4).get(number % 6);
        OffsetDateTime time = OffsetDateTime.of(FIRST.plusDays(2L * number), LocalTime.of(9, 0), ZoneOffset.UTC);
        for (String install : List.of("A1", "B1", "A2", "B2", "A3")) {
            double mean = 192 + (install.startsWith("B") ? gain : 0) + 0.9 * random.nextGaussian();
            for (int pull = 1; pull <= 3 && lines.size() <= most; pull++) {
                lines.add(install + "-" + pull + "," + time + ","
                        + String.format(Locale.ROOT, "%.2f hp", mean + 1.15 * random.nextGaussian()));
                time = time.plusMinutes(5);
            }
            time = time.plusMinutes(20);
        }
        return lines;
    }

    /** Makes a folder of rig records of the rig on which the tests were run. */
    public static Path record(Path folder) {
        run("rig", "add", Path.of("demo-data/baselines.csv"), "--records", folder, "--name", "rollers 1", "--measure", "typed " + MEASURE + " in hp",
                "--level", "192hp", "--restrapped");
        return folder;
    }
}

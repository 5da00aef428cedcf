package fairpull.demo;

import fairpull.cli.CommandLineProgram;
import fairpull.cli.DemoSteps;
import fairpull.cli.DemoSteps.Scenario;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Writes {@code plans}: the two invented tests as a user would have made them by the command line, the plan sealed on the eve, the
 * exports taken after the last pull.
 */
public final class DemoPlans {
    private static final Map<Scenario, OffsetDateTime> EVES = new TreeMap<>(Map.of(
            Scenario.ELECTRIC_PUMP, OffsetDateTime.parse("2026-05-08T16:10:00+02:00"),
            Scenario.PANEL_FILTER, OffsetDateTime.parse("2026-05-15T16:25:00+02:00")));
    private static final int HOURS_TO_THE_IMPORT = 22;

    private DemoPlans() {
    }

    /** Writes all tests into the folder named by the only argument, {@code plans} without one; what stands there is replaced. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of("demo-data"), Path.of(arguments.length > 0 ? arguments[0] : "plans"));
    }

    static void write(Path data, Path plans) throws IOException {
        for (Map.Entry<Scenario, OffsetDateTime> test : EVES.entrySet()) {
            Path folder = plans.resolve(test.getKey().folder());
            remove(folder);
            run(DemoSteps.beforeTheDay(test.getKey(), data, folder), test.getValue());
            run(DemoSteps.onTheDay(test.getKey(), data, folder), test.getValue().plusHours(HOURS_TO_THE_IMPORT));
        }
    }

    private static void run(List<List<String>> steps, OffsetDateTime at) {
        StringWriter said = new StringWriter();
        Clock clock = Clock.fixed(at.toInstant(), at.getOffset());
        for (List<String> step : steps) {
            int status = new CommandLineProgram(new PrintWriter(said, true), new PrintWriter(said, true), clock).runVerb(step);
            if (status != 0) {
                throw new IllegalStateException(step + " ended with " + status + ": " + said);
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}

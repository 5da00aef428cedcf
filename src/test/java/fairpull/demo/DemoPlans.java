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
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes {@code plans}: the two invented tests as a user would have made them by the command line, the plan sealed on the eve, the
 * exports taken after the last pull.
 */
public final class DemoPlans {
    private DemoPlans() {
    }

    /** Writes all tests into the folder named by the only argument, {@code plans} without one; what stands there is replaced. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of("demo-data"), Path.of(arguments.length > 0 ? arguments[0] : "plans"));
    }

    static void write(Path data, Path plans) throws IOException {
        for (Scenario scenario : Scenario.values()) {
            Path folder = plans.resolve(scenario.folder());
            remove(folder);
            run(DemoSteps.beforeTheDay(scenario, data, folder), scenario.eve());
            run(DemoSteps.onTheDay(scenario, data, folder), scenario.evening());
        }
    }

    private static void run(List<List<String>> steps, Clock clock) {
        StringWriter said = new StringWriter();
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

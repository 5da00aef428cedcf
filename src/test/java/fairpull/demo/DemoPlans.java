package fairpull.demo;

import fairpull.cli.CommandLineProgram;
import fairpull.cli.DemoSteps;
import fairpull.cli.DemoSteps.Scenario;
import fairpull.domain.plan.Correction;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.io.folder.TestFolder;
import fairpull.io.table.ColumnGuess;
import fairpull.io.table.Export;
import fairpull.io.table.ExportFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
            remember(scenario, data, folder);
            run(DemoSteps.onTheDay(scenario, data, folder), scenario.evening());
        }
    }

    /** The tests were taken before the throttle was read unasked: their mappings hold none, and later pulls are read as the first were. */
    private static void remember(Scenario scenario, Path data, Path folder) throws IOException {
        Set<Quantity> needed = scenario == Scenario.ELECTRIC_PUMP ? EnumSet.of(Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE)
                : EnumSet.of(Quantity.ENGINE_SPEED, Quantity.POWER);
        Export export = ExportFile.look(data.resolve(scenario.folder()).resolve("A1-1.csv"), Optional.empty()).sample();
        Mapping whole = ColumnGuess.mapping(export, needed, Map.of(), Optional.of(Correction.NONE));
        TestFolder.open(folder).remember(List.of(new Mapping(whole.fingerprint(),
                whole.columns().stream().filter(column -> column.quantity() != Quantity.FRACTION).toList(), whole.corrected(),
                whole.decimalMark())));
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

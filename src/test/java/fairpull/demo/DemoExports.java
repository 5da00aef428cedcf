package fairpull.demo;

import fairpull.domain.pull.PullId;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Writes {@code demo-data}: the exports and the notebook of two invented test days. The same bytes on every Java.
 *
 * <p>Each seed was chosen, since one test shows one lesson only: it is the smallest from 1 upward that makes the point named beside it.
 * A seed says nothing of how often such a day would happen.
 */
public final class DemoExports {
    private static final String START = "2026-05-09T08:40:00+02:00";

    /**
     * Electric water pump (B) against belt-driven pump (A), a three-litre saloon. Part B adds 4.8 hp to a mean of 192 hp over 3000–6500 rpm;
     * pull scatter 0.6 %, refit scatter 0.4 %, and the day takes 0.005 % a minute.
     * Seed: the smallest with a 95 % interval that lies beyond 3 hp, drift fitted, refit scatter on record as 0.9 hp with 11 degrees of freedom.
     */
    static final Scenario ELECTRIC_PUMP = new Scenario("electric-pump", 1, new TorqueCurve(306, 4300, 5300, 4600, 3794),
            new Scenario.Driving(2150, 6780, 520, 0.0262), "ABABA", 2, 5, new Scenario.Scatter(0.006, 0.004, -0.00005),
            new Scenario.Clock(OffsetDateTime.parse(START), 4, 36),
            new Scenario.Weather(21.2, 1009.3, 46), ExportForm.COMMAS, PullId.parse("B2-3"));

    /**
     * High-flow panel air filter (B) against the stock one (A), a two-litre hatchback, strapped down anew at each swap. Part B adds nothing;
     * pull scatter and refit scatter are 0.7 % each.
     * Seed: the smallest at which a t-test that takes the pulls for independent says gain with p below 0.04 (clear of 0.05, so that no way of
     * reading the curves tips it), and the model with installs as units says nothing, on own data and with refit scatter on record as
     * 0.6 kW with 5 degrees of freedom.
     */
    static final Scenario PANEL_FILTER = new Scenario("panel-filter", 33, new TorqueCurve(196, 4100, 4700, 4300, 0),
            new Scenario.Driving(1950, 6320, 540, 0.0241), "ABA", 1, 5, new Scenario.Scatter(0.007, 0.007, 0),
            new Scenario.Clock(OffsetDateTime.parse(START).plusDays(7), 4, 24),
            new Scenario.Weather(18.6, 1016.8, 52), ExportForm.QUOTED, Optional.empty());

    private static final List<Scenario> SCENARIOS = List.of(ELECTRIC_PUMP, PANEL_FILTER);
    private static final long SENSORS = 0x5eed;

    private DemoExports() {
    }

    /** Writes all files into the folder named by the only argument, {@code demo-data} without one. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "demo-data");
        for (Map.Entry<String, byte[]> file : files().entrySet()) {
            Path target = folder.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.write(target, file.getValue());
        }
    }

    /** {@return every file by its path inside {@code demo-data}} */
    static Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        SCENARIOS.forEach(scenario -> addDay(scenario, files));
        files.put("baselines.csv", Baselines.table().getBytes(StandardCharsets.UTF_8));
        files.put("cool-down/intake-air.csv", CoolDown.INTAKE_AIR.export());
        return files;
    }

    private static void addDay(Scenario scenario, Map<String, byte[]> files) {
        SplittableRandom sensors = new SplittableRandom(scenario.seed() ^ SENSORS);
        Notebook notebook = new Notebook(scenario, sensors.split());
        for (Day.Run run : Day.draw(scenario)) {
            SplittableRandom noise = sensors.split();
            if (!run.aborted()) {
                notebook.enter(run);
            }
            if (isKept(run.id())) {
                String path = scenario.folder() + (run.aborted() ? "/aborted/" : "/") + run.id() + ".csv";
                files.put(path, export(scenario, run, notebook.intakeAirC(run.minute()), noise));
            }
        }
        files.put(scenario.folder() + "/notebook.csv", notebook.table().getBytes(StandardCharsets.UTF_8));
    }

    /** Of the warm-ups only those of the first install were exported: nobody keeps the others. */
    private static boolean isKept(PullId id) {
        return !id.warmUp() || "A1".equals(id.install());
    }

    private static byte[] export(Scenario scenario, Day.Run run, double intakeAirC, SplittableRandom noise) {
        Scenario.Driving driving = run.aborted() ? scenario.sweep().liftingAt(4150) : scenario.sweep();
        boolean partB = run.id().install().startsWith("B");
        Sweep sweep = new Sweep(scenario.curve(), driving, partB, run.factor(), noise);
        return scenario.form().write(sweep.run(), intakeAirC, noise);
    }
}

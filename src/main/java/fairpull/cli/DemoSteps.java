package fairpull.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The command lines that take an invented test from nothing to its report. */
public final class DemoSteps {
    static final String INVENTED = "Invented data: no car was run; there is no make, model, part, shop or person behind it.";

    private final Path data;
    private final Path test;
    private final Path report;

    private DemoSteps(Path data, Path test, Path report) {
        this.data = data;
        this.test = test;
        this.report = report;
    }

    /** The invented tests. */
    public enum Scenario {
        /** An electric water pump against the belt-driven one: a gain. */
        ELECTRIC_PUMP("electric-pump", "2026-05-08T16:10:00+02:00"),
        /** A high-flow panel filter against the stock one: pulls taken for independent would say gain. */
        PANEL_FILTER("panel-filter", "2026-05-15T16:25:00+02:00");

        private static final int HOURS_TO_THE_IMPORT = 22;

        private final String folder;
        private final OffsetDateTime eve;

        Scenario(String folder, String eve) {
            this.folder = folder;
            this.eve = OffsetDateTime.parse(eve);
        }

        /** {@return the clock of the invented day's eve, when the plan is sealed} */
        public Clock eve() {
            return Clock.fixed(eve.toInstant(), eve.getOffset());
        }

        /** {@return the clock of the invented day after its last pull} */
        public Clock evening() {
            return Clock.fixed(eve.plusHours(HOURS_TO_THE_IMPORT).toInstant(), eve.getOffset());
        }

        /** {@return the name of its folders in demo-data and plans} */
        public String folder() {
            return folder;
        }
    }

    /** {@return the steps before the day: make the test, check it, seal it} */
    public static List<List<String>> beforeTheDay(Scenario scenario, Path data, Path test) {
        return new DemoSteps(data, test, test).planned(scenario);
    }

    /** {@return the steps on the day: notebook and exports} */
    public static List<List<String>> onTheDay(Scenario scenario, Path data, Path test) {
        return new DemoSteps(data, test, test).taken(scenario);
    }

    /** {@return the steps after it: judge and report} */
    public static List<List<String>> afterTheDay(Path test, Path report) {
        return new DemoSteps(test, test, report).judged();
    }

    private List<List<String>> planned(Scenario scenario) {
        List<String> make = scenario == Scenario.ELECTRIC_PUMP
                ? List.of("new", test.toString(), "--title", "Electric water pump against belt-driven pump",
                        "--remark", INVENTED,
                        "--part-a", "belt-driven water pump", "--part-b", "electric water pump",
                        "--measure", "mean power 3000-6500 rpm in hp", "--further", "peak power in hp",
                        "--further", "mean torque 3000-6500 rpm in lbf·ft", "--expected", "190hp", "--worthwhile", "3hp",
                        "--claim", "3hp", "--claim", "5hp", "--claim", "8hp", "--drift", "linear", "--sequence", "ABABA", "--pulls", "5",
                        "--warm-ups", "2", "--interval", "4", "--swap", "8", "--rig", "roller-inertia", "--rig-name", "rollers 1",
                        "--gear", "4", "--pull-scatter", "0.6%", "--refit-scatter", "0.9hp", "--refit-df", "11")
                : List.of("new", test.toString(), "--title", "High-flow panel filter against the stock filter",
                        "--remark", INVENTED,
                        "--part-a", "stock panel air filter", "--part-b", "high-flow panel air filter",
                        "--measure", "mean power 2500-6000 rpm in kW", "--further", "peak power in kW", "--expected", "85kW",
                        "--worthwhile", "1%", "--claim", "1kW", "--sequence", "ABA", "--pulls", "5", "--warm-ups", "1", "--interval", "4.5",
                        "--swap", "2", "--rig", "roller-inertia", "--rig-name", "rollers 1", "--gear", "4",
                        "--pull-scatter", "0.7%", "--refit-scatter", "0.6kW", "--refit-df", "5");
        return List.of(make, List.of("check", test.toString()), List.of("seal", test.toString()));
    }

    private List<List<String>> taken(Scenario scenario) {
        Path exports = data.resolve(scenario.folder());
        List<List<String>> steps = new ArrayList<>();
        steps.add(List.of("note", test.toString(), "--table", exports.resolve("notebook.csv").toString()));
        if (scenario == Scenario.ELECTRIC_PUMP) {
            steps.add(List.of("note", test.toString(), "B2-3", "--aborted", "lifted off at 4150 rpm"));
        }
        List<String> take = new ArrayList<>(List.of("import", test.toString()));
        List<String> installs = scenario == Scenario.ELECTRIC_PUMP ? List.of("A1", "B1", "A2", "B2", "A3") : List.of("A1", "B1", "A2");
        for (String install : installs) {
            String[] names = exports.toFile().list((folder, name) -> name.startsWith(install + "-") && name.endsWith(".csv"));
            Arrays.stream(names == null ? new String[0] : names).sorted().map(exports::resolve).map(Path::toString).forEach(take::add);
        }
        take.addAll(List.of("--corrected", "none"));
        steps.add(take);
        return steps;
    }

    private List<List<String>> judged() {
        return List.of(List.of("judge", test.toString()), List.of("report", test.toString(), "--out", report.toString()));
    }
}

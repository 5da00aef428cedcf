package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code demo}: the whole job on invented data, every command line shown before its answer. */
@Command(name = "demo",
        description = "Does the whole job on two invented tests, step by step: size, new, check, seal, note, import, judge, report. "
                + "Each command line is shown before its answer. The first test ends in a gain; in the second, pulls taken for "
                + "independent would say gain, and the finding is undecided.",
        footer = "  fairpull demo")
final class DemoVerb extends Verb {
    private static final int LONGEST_SHOWN = 160;

    @Option(names = "--data", defaultValue = "demo-data", paramLabel = "FOLDER",
            description = "The invented exports; default ${DEFAULT-VALUE}.")
    private Path data;

    @Option(names = "--into", defaultValue = "target/demo", paramLabel = "FOLDER",
            description = "Where the tests are made; what an earlier demo left there is replaced. Default ${DEFAULT-VALUE}.")
    private Path into;

    @Override
    protected void work() throws IOException {
        if (given().anyMatch("--json"::equals)) {
            throw new UsageException("--json", "the demo is for reading; each of its steps takes --json");
        }
        for (DemoSteps.Scenario scenario : DemoSteps.Scenario.values()) {
            if (!Files.isRegularFile(data.resolve(scenario.folder()).resolve("notebook.csv"))) {
                throw new InputException(InputException.Place.of(data.resolve(scenario.folder()).toString()), "no demo data there",
                        "run it from the top of the project, or name the folder with --data");
            }
        }
        step(program(), List.of("size", "--sequence", "ABABA", "--pulls", "5", "--warm-ups", "2", "--pull-scatter", "1.15",
                "--refit-scatter", "0.9", "--refit-df", "11", "--gain", "3", "--drift", "linear", "--interval", "4", "--swap", "8",
                "--set-up", "30", "--unit", "hp"));
        for (DemoSteps.Scenario scenario : DemoSteps.Scenario.values()) {
            Path test = into.resolve(scenario.folder());
            removeEarlier(test);
            steps("The eve of an invented day", scenario.eve(), DemoSteps.beforeTheDay(scenario, data, test));
            steps("The evening of that day", scenario.evening(), DemoSteps.onTheDay(scenario, data, test));
            steps("The finding", scenario.evening(), DemoSteps.afterTheDay(test, into.resolve(scenario.folder() + ".html")));
        }
    }

    /** The invented days lie in the past, so the steps are done by a clock that stands where theirs would. */
    private void steps(String title, Clock clock, List<List<String>> steps) {
        say("\n" + title + " (the demo's clock stands at " + OffsetDateTime.now(clock) + ")");
        CommandLineProgram thatDay = program().at(clock);
        steps.forEach(step -> step(thatDay, step));
    }

    private void step(CommandLineProgram program, List<String> arguments) {
        say("\n> fairpull " + shown(arguments));
        int status = program.runVerb(arguments);
        if (status != CommandLineProgram.done()) {
            throw new InputException(InputException.Place.none(), "the step before this line did not succeed", "the demo stops here");
        }
    }

    private static String shown(List<String> arguments) {
        String line = arguments.stream().map(word -> word.matches("[\\w./:%\\\\-]+") ? word
                : '"' + word + '"').collect(Collectors.joining(" "));
        return line.length() <= LONGEST_SHOWN || !arguments.get(0).equals("import")
                ? line
                : line.substring(0, LONGEST_SHOWN - 2) + "… (" + arguments.stream().filter(word -> word.endsWith(".csv")).count()
                        + " files)";
    }

    /** Only a test that an earlier demo made is removed: its plan says that its data are invented. */
    private static void removeEarlier(Path test) throws IOException {
        Path plan = test.resolve("plan.json");
        if (!Files.isRegularFile(plan)) {
            return;
        }
        if (!Files.readString(plan).contains(DemoSteps.INVENTED)) {
            throw new InputException(InputException.Place.of(test.toString()), "there is a test that the demo did not make",
                    "choose another folder with --into");
        }
        try (Stream<Path> files = Files.walk(test)) {
            files.sorted(Comparator.reverseOrder()).forEach(DemoVerb::delete);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }
}

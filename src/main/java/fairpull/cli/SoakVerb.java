package fairpull.cli;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.conditions.PlanSoak;
import fairpull.domain.heat.SoakAnswer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code soak}: a cool-down, the interval it asks for, and what heat leaves on the measure. */
@Command(name = "soak",
        description = "Fits one or two time constants to a logged cool-down (a time and a temperature column) and plans the heat of the "
        + "day: the interval that holds the start temperature, warm-up pulls per install, and the bias left on the deciding measure.",
        footer = {"  fairpull soak demo-data/cool-down/intake-air.csv --ambient 22C --level 190hp --worthwhile 3hp",
            "  fairpull soak --time-constant 9min --pull-rise 6K --interval 5 --swap 20"})
final class SoakVerb extends Verb {
    @Parameters(arity = "0..1", paramLabel = "LOG", description = "The log, begun right after a pull.")
    private Path log;

    @Option(names = "--column", paramLabel = "QUANTITY=NAME[:UNIT]",
            description = "Which column is read, where the guess is not wanted: temperature=\"Intake Air\":C, time=1:s.")
    private List<String> columns = List.of();

    @Option(names = "--from", paramLabel = "TIME", description = "Where in the log the cool-down begins; seconds without a unit.")
    private String from;

    @Option(names = "--ambient", paramLabel = "T", description = "What the car cools down to, such as 22C; fitted where it is not given.")
    private String ambient;

    @Option(names = "--time-constant", paramLabel = "TIME",
            description = "Instead of a log: minutes without a unit; a starting guess until a log confirms it. May be given twice.")
    private List<String> timeConstants = List.of();

    @Option(names = "--share", paramLabel = "S", description = "What the first of two typed constants has of a pull's rise, such as 60%%.")
    private String share;

    @Option(names = "--pull-rise", paramLabel = "K",
            description = "What one pull adds to the temperature, such as 6K; default: the log's own start above ambient.")
    private String pullRise;

    @Option(names = "--tolerance", defaultValue = "2K", paramLabel = "K",
            description = "How far a counted pull may start from the reference pull, the first counted one; default ${DEFAULT-VALUE}.")
    private String tolerance;

    @Option(names = "--sequence", defaultValue = "ABA", paramLabel = "LETTERS",
            description = "Order of installs; default ${DEFAULT-VALUE}.")
    private String sequence;

    @Option(names = "--pulls", defaultValue = "5", paramLabel = "N", description = "Counted pulls per install; default ${DEFAULT-VALUE}.")
    private int pulls;

    @Option(names = "--interval", defaultValue = "5", paramLabel = "MIN",
            description = "Minutes from pull to pull; default ${DEFAULT-VALUE}.")
    private String interval;

    @Option(names = "--swap", defaultValue = "20", paramLabel = "MIN", description = "Minutes that a swap adds; default ${DEFAULT-VALUE}.")
    private String swap;

    @Option(names = "--sensitivity", paramLabel = "X/K",
            description = "How the measure follows the temperature, such as -0.18%%/K; default: √(T0/T) of inlet air, spark ignition.")
    private String sensitivity;

    @Option(names = "--level", paramLabel = "X", description = "Expected level of the deciding measure, such as 190hp.")
    private String level;

    @Option(names = "--worthwhile", paramLabel = "X", description = "The smallest gain that matters, such as 3hp or 1.5%%.")
    private String worthwhile;

    @Option(names = "--report", paramLabel = "FILE", description = "Write a page with the fitted curve too.")
    private Path report;

    @Override
    protected void work() throws IOException {
        SoakAnswer soak = PlanSoak.plan(request());
        if (report != null) {
            PlanSoak.write(soak, report);
        }
        answer(Answer.of(soak));
    }

    private PlanSoak.Request request() {
        return new PlanSoak.Request(Optional.ofNullable(log), columns, Optional.ofNullable(from), timeConstants,
                Optional.ofNullable(share), Optional.ofNullable(ambient), Optional.ofNullable(pullRise), tolerance, sequence, pulls,
                interval, swap, Optional.ofNullable(sensitivity), Optional.ofNullable(level), Optional.ofNullable(worthwhile));
    }
}

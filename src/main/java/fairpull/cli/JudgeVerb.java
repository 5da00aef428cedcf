package fairpull.cli;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.judging.JudgeCurves;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.app.usecase.judging.JudgeTable;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Better;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code judge}: the finding of a test, or of a plain table of pulls. */
@Command(name = "judge",
        description = "States the finding: whether the change is real, how large, and what would overturn that. A test is judged "
                + "by its own plan; a plain table (columns install, part, pull, value; optional session, minutes and covariates) "
                + "by the options given.",
        footer = {"  fairpull judge plans/electric-pump",
            "  fairpull judge --table pulls.csv --worthwhile 3 --drift linear --unit hp"})
final class JudgeVerb extends Verb {
    @Parameters(arity = "0..1", paramLabel = "TEST", description = "Folder of a test.")
    private Path test;

    @Option(names = "--table", paramLabel = "FILE", description = "A plain table of pulls, instead of a test.")
    private Path table;

    @Option(names = "--curves", paramLabel = "FILE", description = "A plain long table of curves, instead of a test: install, part, pull, "
            + "speed and value, units in brackets behind the last two; one row a speed of a pull. Values that report --csv wrote as "
            + "curve-points.csv stand on a grid already (its column bandwidth) and are not smoothed again.")
    private Path curves;

    @Option(names = "--bandwidth", paramLabel = "RPM", description = "How far the local linear fits of --curves reach to either side; "
            + "default 100 rpm.")
    private String bandwidth;

    @Option(names = "--record-level", paramLabel = "X", description = "The level at which the scatter of a record holds, for --curves; "
            + "default: the mean of A over the grid.")
    private String recordLevel;

    @Mixin
    private ScatterOptions scatter;

    @Mixin
    private JudgingOptions judging;

    @Option(names = "--covariate", paramLabel = "NAME", description = "A column whose slope is taken out; may be given several times.")
    private List<String> covariates = List.of();

    @Option(names = "--worthwhile", paramLabel = "X", description = "The smallest gain that matters, in the unit of the values.")
    private String worthwhile;

    @Option(names = "--better", defaultValue = "more", paramLabel = "more|less",
            description = "Which direction is a gain; default ${DEFAULT-VALUE}.")
    private String better;

    @Option(names = "--drawn", description = "The order was drawn at random among all with these counts: adds the randomisation test.")
    private boolean drawn;

    @Mixin
    private DecimalOption decimal;

    @Option(names = "--look", description = "Write this look at a test into its log; looks before the end are to be planned.")
    private boolean look;

    @Option(names = "--unit", defaultValue = "", paramLabel = "UNIT", description = "Unit of the values.")
    private String unit;

    @Override
    protected void work() throws IOException {
        if (table == null && test == null && curves == null) {
            throw new UsageException("TEST", "is missing; name the folder of a test, or a table with --table FILE or --curves FILE");
        }
        if (curves != null) {
            ofCurves();
        } else if (recordLevel != null) {
            throw new UsageException("--record-level", "belongs to --curves");
        } else if (bandwidth != null) {
            throw new UsageException("--bandwidth", "belongs to --curves; that of a test stands in its plan");
        } else if (table == null) {
            refuseTableOptions();
            answer(Answer.of(look ? JudgeFolder.look(test, now()) : JudgeFolder.judge(test)));
        } else if (look) {
            throw new UsageException("--look", "belongs to a test with a log; a table has none");
        } else if (test == null) {
            answer(Answer.of(JudgeTable.judge(table, settings(), unit, decimal.mark())));
        } else {
            throw new UsageException("--table", "judge a test or a table, not both; leave “" + test + "” or --table out");
        }
    }

    private void ofCurves() throws IOException {
        String other = table != null ? "--table" : test != null ? "TEST" : look ? "--look" : drawn ? "--drawn"
                : worthwhile != null ? "--worthwhile" : null;
        if (other != null) {
            throw new UsageException(other, "does not go with --curves; leave one of them out");
        }
        answer(Answer.of(JudgeCurves.judge(curves, settings(), unit, decimal.mark(), bandwidth,
                recordLevel == null ? OptionalDouble.empty() : OptionalDouble.of(Numbers.positive("--record-level", recordLevel)))));
    }

    private JudgeSettings settings() {
        OptionalDouble gain = worthwhile == null ? OptionalDouble.empty() : OptionalDouble.of(Numbers.positive("--worthwhile", worthwhile));
        return new JudgeSettings(judging.drift(), covariates, scatter.pullRecord(), scatter.refitRecord(), gain, judging.errorRate(),
                judging.sides(), JudgingOptions.constant("--better", better, Better.values()), drawn);
    }

    /** The plan names the analysis of a test; an option that would change it is a mistake, not a wish. */
    private void refuseTableOptions() {
        given().filter(option -> !option.equals("--json") && !option.equals("--look")).findFirst().ifPresent(option -> {
            throw new UsageException(option, "belongs to --table; a test is judged by its plan, which `fairpull amend` changes");
        });
    }
}

package fairpull.cli;

import fairpull.app.task.Progress;
import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.Prove;
import fairpull.app.usecase.typing.TypedLooks;
import fairpull.app.usecase.typing.TypedTruth;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Better;
import fairpull.domain.proof.ProofQuestion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code prove}: simulates a plan as planned and judged. */
@Command(name = "prove",
        description = "Simulates a plan as it is planned and judged, its looks too: how often a change is announced where there is none, "
        + "how often the gain is found, how often the interval holds it, each with the standard error of the simulation. The plan is that "
        + "of a test, or a sequence given by options. Where a scatter rests on a record the truth is drawn from what the record leaves "
        + "open, unless a true scatter is typed.",
        footer = {"  fairpull prove --sequence ABABA --pulls 5 --pull-scatter 1.2 --refit-scatter 0.6 --gain 3",
            "  fairpull prove plans/electric-pump --true-drift 2hp/h --outliers 2%%:5hp"})
final class ProveVerb extends Verb {
    /** What belongs to the plan of a test, and can be given only where there is none. */
    private static final List<String> OF_SEQUENCE = List.of("--pulls", "--warm-ups", "--interval", "--swap", "--alpha", "--sides",
            "--drift", "--better", "--looks", "--refit-df", "--pull-df", "--unit");

    @Parameters(paramLabel = "TEST", arity = "0..1", description = "Folder of a test.")
    private Path test;

    @Option(names = "--sequence", paramLabel = "LETTERS", description = "Order of installs, such as ABABA, in place of a test.")
    private String sequence;

    @Option(names = "--campaigns", defaultValue = "10000", paramLabel = "N",
            description = "How many are simulated, up to ten million; default ${DEFAULT-VALUE}.")
    private int campaigns;

    @Option(names = "--seed", defaultValue = "1", paramLabel = "N",
            description = "The same seed gives the same answer; default ${DEFAULT-VALUE}.")
    private long seed;

    @Option(names = "--gain", paramLabel = "X", description = "The true gain; default: the worthwhile gain of the test.")
    private String gain;

    @Mixin
    private InstallOptions installs;

    @Mixin
    private ScatterOptions scatter;

    @Option(names = "--true-drift", paramLabel = "X/h", description = "A true drift within each session, such as 2hp/h.")
    private String trueDrift;

    @Option(names = "--outliers", paramLabel = "SHARE:SIZE",
            description = "Pulls that are off by so much, up or down alike, such as 2%%:5hp.")
    private String outliers;

    @Option(names = "--autocorrelation", paramLabel = "PHI",
            description = "Correlation of the scatter of neighbouring pulls of a session, between -1 and 1.")
    private String autocorrelation;

    @Mixin
    private JudgingOptions judging;

    @Option(names = "--better", defaultValue = "more", paramLabel = "more|less",
            description = "Which direction is a gain; default ${DEFAULT-VALUE}.")
    private String better;

    @Option(names = "--looks", paramLabel = "KIND:N,N", description = "Planned looks, such as of:3,5 or pocock:3,5.")
    private String looks;

    @Option(names = "--unit", defaultValue = "", paramLabel = "UNIT",
            description = "Unit of gain and scatter, for the words of the answer.")
    private String unit;

    @Override
    protected void work() throws IOException {
        if ((test == null) == (sequence == null)) {
            throw new UsageException(test == null ? "TEST" : "--sequence", test == null
                    ? "is missing; name the folder of a test, or a sequence with --sequence LETTERS"
                    : "prove a test or a sequence, not both");
        }
        if (campaigns < 1 || campaigns > ProofQuestion.MOST_CAMPAIGNS) {
            throw new UsageException("--campaigns", "must be 1 to " + ProofQuestion.MOST_CAMPAIGNS + ", was " + campaigns);
        }
        TypedTruth.Run run = new TypedTruth.Run(campaigns, seed);
        WatchedWork work = program().watchedWork();
        Answer answer;
        try {
            answer = test == null ? ofSequence(run, work) : ofTest(run, work);
        } finally {
            work.clearLine();
        }
        answer(answer);
    }

    private Answer ofTest(TypedTruth.Run run, Progress progress) throws IOException {
        given().filter(OF_SEQUENCE::contains).findFirst().ifPresent(option -> {
            throw new UsageException(option, "belongs to --sequence; a test is proved by its plan, which `fairpull amend` changes");
        });
        return Prove.test(test, new TypedTruth.Words(gain, scatter.pullTyped(), scatter.refitTyped(), trueDrift, outliers,
                autocorrelation), run, progress);
    }

    private Answer ofSequence(TypedTruth.Run run, Progress progress) {
        Missing missing = new Missing().unless(gain, "--gain", "3");
        scatter.require(missing);
        missing.refuse();
        SizeQuestion question = new SizeQuestion(sequence.strip().toUpperCase(Locale.ROOT), installs.pulls(), installs.warmUps(),
                scatter.pullToPlan(),
                scatter.pullDfToPlan(), scatter.refitToPlan(), scatter.refitDfToPlan(), Numbers.positive("--gain", gain), 0.8,
                judging.errorRate(), judging.sides(), judging.drift(), installs.clock(0), TypedLooks.parse("--looks", looks));
        return Prove.sequence(question, JudgingOptions.constant("--better", better, Better.values()),
                new TypedTruth.Words(null, null, null, trueDrift, outliers, autocorrelation), run, unit, progress);
    }
}

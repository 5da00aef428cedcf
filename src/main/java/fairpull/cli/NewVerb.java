package fairpull.cli;

import fairpull.app.usecase.Receipt;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.planning.NewPlan;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Rig;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: makes a test. */
@Command(name = "new",
        description = "Makes a test: a folder with a plan in it. Everything can be edited in its plan.json until it is sealed.",
        footer = {"  fairpull new pump-test --part-a \"belt pump\" --part-b \"electric pump\" \\",
            "      --measure \"mean power 3000-6500 rpm in hp\" --expected 190hp --worthwhile 3hp \\",
            "      --sequence ABABA --pulls 5 --warm-ups 2 \\",
            "      --pull-scatter 0.6%% --refit-scatter 0.4%% --refit-df 11"})
final class NewVerb extends Verb {
    @Parameters(paramLabel = "FOLDER", description = "Where the test will be kept.")
    private Path folder;

    @Option(names = "--title", paramLabel = "TEXT", description = "What the test is called; default: the folder's name.")
    private String title;

    @Option(names = "--remark", defaultValue = "", paramLabel = "TEXT", description = "What a reader should know first.")
    private String remark;

    @Option(names = "--part-a", required = true, paramLabel = "TEXT", description = "The reference state.")
    private String partA;

    @Option(names = "--part-b", required = true, paramLabel = "TEXT", description = "The changed state.")
    private String partB;

    @Option(names = "--measure", required = true, paramLabel = "TEXT",
            description = "The deciding measure with its unit: “mean power 3000-6500 rpm in hp”, “peak torque in N·m”, “power at 5500 "
                    + "rpm in kW”, “time 60-100 km/h in s”, “response of torque to 90 %% in s”, "
                    + "“typed trap speed in mph”; “, less is better” may follow.")
    private String measure;

    @Option(names = "--further", paramLabel = "TEXT", description = "A further measure, likewise; may be given several times.")
    private List<String> further = List.of();

    @Option(names = "--correction", defaultValue = "none", paramLabel = "STANDARD",
            description = "The standard that power and torque are brought to in the exports, such as sae-j1349; default ${DEFAULT-VALUE}.")
    private String correction;

    @Option(names = "--expected", paramLabel = "AMOUNT",
            description = "Expected level of the deciding measure under A; percentages convert through it.")
    private String expected;

    @Option(names = "--worthwhile", paramLabel = "AMOUNT", description = "The smallest gain that matters: 3hp, 1.5%%.")
    private String worthwhile;

    @Option(names = "--power-wanted", defaultValue = "0.8", paramLabel = "P",
            description = "Chance wanted of finding it; default ${DEFAULT-VALUE}.")
    private String powerWanted;

    @Option(names = "--claim", paramLabel = "AMOUNT", description = "A claim “at least …” to be checked, "
            + "for one engine speed as 5hp@4500rpm; may be given several times.")
    private List<String> claims = List.of();

    @Mixin
    private JudgingOptions judging;

    @Option(names = "--covariate", paramLabel = "CONDITION", description = "A condition whose slope is taken out, such as intake-air.")
    private List<String> covariates = List.of();

    @Mixin
    private CurveOptions curve;

    @Option(names = "--rig", defaultValue = "roller-brake", paramLabel = "KIND",
            description = "roller-inertia, roller-brake, hub, engine-bench, road or strip; default ${DEFAULT-VALUE}.")
    private String rig;

    @Option(names = "--rig-name", defaultValue = "our rig", paramLabel = "TEXT", description = "Which one.")
    private String rigName;

    @Option(names = "--gear", defaultValue = "", paramLabel = "TEXT", description = "The gear used.")
    private String gear;

    @Mixin
    private TypedScatterOptions scatter;

    @Mixin
    private MotionOptions motion;

    @Mixin
    private OrderOptions order;

    @Override
    protected void work() throws IOException {
        List<Condition> conditions = covariates.stream()
                .map(name -> JudgingOptions.constant("--covariate", name, Condition.values())).toList();
        NewPlan.Asked asked = new NewPlan.Asked(partA, partB, measure, further,
                JudgingOptions.constant("--correction", correction, Correction.values()), expected, worthwhile, judging.sides(),
                judging.errorRate(), Numbers.share("--power-wanted", powerWanted, 1), claims, judging.drift(), conditions, curve.typed());
        NewPlan.RigTyped typedRig = new NewPlan.RigTyped(rigName, JudgingOptions.constant("--rig", rig, Rig.Kind.values()), gear,
                scatter.pullScatter, scatter.pullDf, scatter.refitScatter, scatter.refitDf, scatter.records, scatter.startingGuess,
                motion.typed());
        String name = title == null ? nameOf(folder) : title;
        NewPlan.Made made = NewPlan.make(folder, new NewPlan.Request(name, remark, asked, typedRig, order.typed()));
        answer(Receipt.made(folder, made.plan(), made.scatterSaid(), made.warnings()));
    }

    private static String nameOf(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        if (name == null) {
            throw new UsageException("FOLDER", folder + " has no name of its own; give a folder to be made, or a --title");
        }
        return name.toString();
    }

    /** Scatter as amounts with a unit or in percent of the expected level. */
    static final class TypedScatterOptions {
        @Option(names = "--refit-scatter", paramLabel = "AMOUNT", description = "Scatter that refitting adds: 0.8hp, 0.4%%.")
        private String refitScatter;

        @Option(names = "--refit-df", paramLabel = "N",
                description = "Degrees of freedom behind it; without them it serves planning only and the test is judged by its own data.")
        private String refitDf;

        @Option(names = "--pull-scatter", paramLabel = "AMOUNT", description = "Scatter of pulls within one install, likewise.")
        private String pullScatter;

        @Option(names = "--pull-df", paramLabel = "N", description = "Degrees of freedom behind it.")
        private String pullDf;

        @Option(names = "--record", paramLabel = "FOLDER", description = "Take both scatters from the rig record in this folder that "
                + "matches rig name, measure, correction, bandwidth and straps (see `fairpull rig`); needs --expected.")
        private Path records;

        @Option(names = "--starting-guess", description = "Take a labelled guess where no record is given or none matches: pull 0.7%% "
                + "(engine bench 0.5%%), refit 1.0%%, 4 degrees of freedom; no source.")
        private boolean startingGuess;
    }

    /** The order and its clock. */
    static final class OrderOptions {
        @Option(names = "--sequence", defaultValue = "ABABA", paramLabel = "LETTERS",
                description = "Order of installs, sessions parted by |; default ${DEFAULT-VALUE}.")
        private String sequence;

        @Option(names = "--draw", paramLabel = "SEED",
                description = "Draw the order at random with this seed; the letters then give the counts only.")
        private Long seed;

        @Option(names = "--pulls", defaultValue = "5", paramLabel = "N",
                description = "Counted pulls per install; default ${DEFAULT-VALUE}.")
        private int pulls;

        @Option(names = "--warm-ups", defaultValue = "2", paramLabel = "N",
                description = "Warm-up pulls per install; default ${DEFAULT-VALUE}.")
        private int warmUps;

        @Option(names = "--interval", defaultValue = "5", paramLabel = "MIN",
                description = "Minutes from pull to pull; default ${DEFAULT-VALUE}.")
        private String interval;

        @Option(names = "--swap", defaultValue = "20", paramLabel = "MIN",
                description = "Minutes that a swap adds; default ${DEFAULT-VALUE}.")
        private String swap;

        @Option(names = "--set-up", defaultValue = "30", paramLabel = "MIN",
                description = "Minutes before the first pull of a session; default ${DEFAULT-VALUE}.")
        private String setUp;

        @Option(names = "--straps-stay", description = "The swap leaves the straps alone.")
        private boolean strapsStay;

        @Option(names = "--looks", paramLabel = "KIND:N,N",
                description = "Look at the data before the end, after so many installs, where the day is back at A: of:3,5 "
                + "(O’Brien–Fleming-like spending of the error rate) or pocock:3,5.")
        private String looks;

        @Option(names = "--start", paramLabel = "TIME",
                description = "Start of day, when the set-up begins: 9:00; one for each session parted by |, or one for all.")
        private String start;

        @Option(names = "--end", paramLabel = "TIME", description = "End of day, likewise; `check` says what fits.")
        private String end;

        @Option(names = "--break", paramLabel = "TIME+MIN",
                description = "A break and its minutes: 12:30+45; may be given several times.")
        private List<String> breaks = List.of();

        NewPlan.OrderTyped typed() {
            OptionalLong drawn = seed == null ? OptionalLong.empty() : OptionalLong.of(seed);
            return new NewPlan.OrderTyped(sequence, drawn, Numbers.whole("--pulls", pulls, 1, 1000),
                    Numbers.whole("--warm-ups", warmUps, 0, 100), interval, swap, setUp, strapsStay, looks,
                    new NewPlan.HoursTyped(start, end, breaks));
        }
    }
}

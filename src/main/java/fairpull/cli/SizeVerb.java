package fairpull.cli;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.SizePlan;
import fairpull.app.usecase.TypedLooks;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code size}: what a sequence can see. */
@Command(name = "size",
        description = "Says what a sequence of installs can see: the chance of finding a gain, the smallest gain it can find, "
        + "how long the day is, the limit that more pulls cannot pass, and what would reach the power wanted.",
        footer = {"  fairpull size --sequence ABABA --pulls 5 --pull-scatter 1.2 --refit-scatter 0.6 \\",
            "      --gain 3 --interval 5 --swap 20 --unit hp"})
final class SizeVerb extends Verb {
    @Option(names = "--sequence", required = true, paramLabel = "LETTERS",
            description = "Order of installs, such as ABABA; sessions parted by |, as in ABA|BAB.")
    private String sequence;

    @Option(names = "--pulls", defaultValue = "5", paramLabel = "N", description = "Counted pulls per install; default ${DEFAULT-VALUE}.")
    private int pulls;

    @Option(names = "--warm-ups", defaultValue = "0", paramLabel = "N",
            description = "Warm-up pulls per install; default ${DEFAULT-VALUE}.")
    private int warmUps;

    @Mixin
    private ScatterOptions scatter;

    @Option(names = "--gain", required = true, paramLabel = "X", description = "The gain to be found, in the unit of the scatter.")
    private String gain;

    @Option(names = "--power-wanted", defaultValue = "0.8", paramLabel = "P",
            description = "Chance wanted of finding it; default ${DEFAULT-VALUE}.")
    private String powerWanted;

    @Mixin
    private JudgingOptions judging;

    @Option(names = "--interval", defaultValue = "5", paramLabel = "MIN",
            description = "Minutes from pull to pull; default ${DEFAULT-VALUE}.")
    private String interval;

    @Option(names = "--swap", defaultValue = "20", paramLabel = "MIN", description = "Minutes that a swap adds; default ${DEFAULT-VALUE}.")
    private String swap;

    @Option(names = "--set-up", defaultValue = "0", paramLabel = "MIN",
            description = "Minutes before the first pull of a session; default ${DEFAULT-VALUE}.")
    private String setUp;

    @Option(names = "--looks", paramLabel = "KIND:N,N",
            description = "Looks at the data after so many installs, where the day is back at A: of:3,5 (O’Brien–Fleming-like spending of "
            + "the error rate) or pocock:3,5.")
    private String looks;

    @Option(names = "--unit", defaultValue = "", paramLabel = "UNIT",
            description = "Unit of gain and scatter, for the words of the answer.")
    private String unit;

    @Override
    protected void work() {
        Sides sides = judging.sides();
        Drift drift = judging.drift();
        SizeQuestion question = new SizeQuestion(sequence.replaceAll("\\s", "").toUpperCase(Locale.ROOT),
                Numbers.whole("--pulls", pulls, 1, 1000), Numbers.whole("--warm-ups", warmUps, 0, 100), scatter.pullToPlan(),
                scatter.pullDfToPlan(), scatter.refitToPlan(), scatter.refitDfToPlan(), Numbers.positive("--gain", gain),
                Numbers.share("--power-wanted", powerWanted, 1), judging.errorRate(), sides, drift,
                new SizeQuestion.Clock(Numbers.positive("--interval", interval), Numbers.notNegative("--swap", swap),
                        Numbers.notNegative("--set-up", setUp)), TypedLooks.parse("--looks", looks));
        answer(Answer.of(question, SizePlan.size(question), unit));
    }
}

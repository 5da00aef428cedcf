package fairpull.cli;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.planning.SizePlan;
import fairpull.app.usecase.typing.TypedLooks;
import fairpull.domain.finding.SizeQuestion;
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
    @Option(names = "--sequence", paramLabel = "LETTERS",
            description = "Order of installs, needed, such as ABABA; sessions parted by |, as in ABA|BAB.")
    private String sequence;

    @Mixin
    private InstallOptions installs;

    @Mixin
    private ScatterOptions scatter;

    @Mixin
    private GainOptions gain;

    @Mixin
    private JudgingOptions judging;

    @Option(names = "--set-up", defaultValue = "0", paramLabel = "MIN",
            description = "Minutes before the first pull of a session; default ${DEFAULT-VALUE}.")
    private String setUp;

    @Mixin
    private BreakOptions breaks;

    @Option(names = "--looks", paramLabel = "KIND:N,N",
            description = "Looks at the data after so many installs, where the day is back at A: of:3,5 (O’Brien–Fleming-like spending of "
            + "the error rate) or pocock:3,5.")
    private String looks;

    @Option(names = "--unit", defaultValue = "", paramLabel = "UNIT",
            description = "Unit of gain and scatter, for the words of the answer.")
    private String unit;

    @Override
    protected void work() {
        Missing missing = new Missing().unless(sequence, "--sequence", "ABABA");
        gain.require(missing);
        scatter.require(missing);
        missing.refuse();
        String letters = sequence.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
        int sessions = (int) letters.chars().filter(letter -> letter == '|').count() + 1;
        SizeQuestion question = new SizeQuestion(letters, installs.pulls(),
                installs.warmUps(), scatter.pullToPlan(), scatter.pullDfToPlan(), scatter.refitToPlan(), scatter.refitDfToPlan(),
                gain.gain(), gain.powerWanted(), judging.errorRate(), judging.sides(), judging.drift(),
                breaks.kept(installs.clock(Numbers.notNegative("--set-up", setUp)), sessions),
                TypedLooks.parse("--looks", looks));
        answer(Answer.of(question, SizePlan.size(question), unit));
    }
}

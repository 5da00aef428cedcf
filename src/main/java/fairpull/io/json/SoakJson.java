package fairpull.io.json;

import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.heat.Mode;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the heat asks of a day, as JSON. Times are minutes, rises kelvin, temperatures °C; the measure is in its own unit. */
public final class SoakJson {
    private final SoakAnswer answer;

    private SoakJson(SoakAnswer answer) {
        this.answer = answer;
    }

    /** {@return the answer as a document; {@code sentences} are its warnings} */
    public static String document(SoakAnswer answer, List<String> sentences) {
        return new SoakJson(answer).tree(sentences).document();
    }

    private Tree tree(List<String> sentences) {
        Tree tree = Tree.empty();
        answer.choice().ifPresentOrElse(choice -> tree.tree("fit", fit(choice)), () -> tree.nothing("fit"));
        SoakQuestion question = answer.question();
        SoakPlan plan = answer.plan();
        tree.trees("timeConstants", answer.modes(), SoakJson::mode)
                .number("ambientC", Units.CELSIUS.fromSi(question.ambientK()))
                .number("pullRiseK", question.pullRiseK())
                .number("toleranceK", question.toleranceK())
                .flag("told", !answer.cannotSay());
        if (answer.cannotSay()) {
            return tree.nothing("intervalMinutes").nothing("day").texts("warnings", sentences);
        }
        return tree.number("coolsWithinMinutes", minutes(plan.coolsWithinS()))
                .number("intervalMinutes", minutes(plan.intervalWithoutWarmUpsS()))
                .number("intervalLowMinutes", minutes(plan.holdingInterval().lowS()))
                .number("intervalHighMinutes", minutes(plan.holdingInterval().highS()))
                .trees("intervals", plan.holding(), (row, holding) -> row.whole("warmUps", holding.warmUps())
                        .number("minutes", minutes(holding.intervalS())))
                .tree("day", day())
                .texts("warnings", sentences);
    }

    private Tree day() {
        SoakQuestion.Day day = answer.question().day();
        SoakPlan plan = answer.plan();
        return Tree.empty().text("sequence", day.letters()).whole("pulls", day.pulls())
                .number("intervalMinutes", minutes(day.intervalS())).number("swapMinutes", minutes(day.swapS()))
                .number("settledRiseK", plan.settledRiseK())
                .whole("warmUpsFirst", plan.warmUpsFirst()).whole("warmUpsAfterSwap", plan.warmUpsAfterSwap())
                .text("unit", unit().symbol())
                .tree("bias", bias(plan.bias())).tree("biasWithoutWarmUps", bias(plan.biasWithoutWarmUps()))
                .tree("gateBias", bias(plan.gateBias()))
                .trees("startTemperatures", plan.pulls(), (row, pull) -> row.whole("install", pull.install() + 1)
                        .text("part", pull.part().name()).flag("warmUp", pull.warmUp()).number("minutes", minutes(pull.timeS()))
                        .number("riseK", pull.riseK()));
    }

    private static Tree fit(ModeChoice choice) {
        CoolDownFit fit = choice.chosen();
        return Tree.empty().whole("timeConstants", fit.modes().size())
                .text("reason", choice.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .number("pValue", choice.pValue()).number("criterionGain", choice.criterionGain())
                .trees("exponentials", fit.modes(), SoakJson::fitted)
                .number("ambientC", Units.CELSIUS.fromSi(fit.ambientK())).number("ambientStandardErrorK", fit.ambientErrorK())
                .flag("ambientGiven", fit.ambientGiven())
                .number("residualDeviationK", fit.residualDeviationK()).number("degreesOfFreedom", fit.degreesOfFreedom())
                .number("serialCorrelation", fit.serialCorrelation()).number("level", fit.level());
    }

    private static void fitted(Tree tree, FittedMode mode) {
        tree.number("timeConstantMinutes", minutes(mode.timeConstantS())).number("standardErrorMinutes", minutes(mode.standardErrorS()))
                .number("lowMinutes", minutes(mode.lowS())).number("highMinutes", minutes(mode.highS()))
                .number("amplitudeK", mode.amplitudeK()).number("amplitudeStandardErrorK", mode.amplitudeErrorK());
    }

    private static void mode(Tree tree, Mode mode) {
        tree.number("minutes", minutes(mode.timeConstantS())).number("share", mode.share());
    }

    private Tree bias(SoakPlan.Bias bias) {
        OptionalDouble own = bias.si().isPresent() ? OptionalDouble.of(unit().differenceFromSi(bias.si().getAsDouble()))
                : OptionalDouble.empty();
        return Tree.empty().number("relative", bias.relative()).number("own", own).number("shareOfWorthwhile", bias.shareOfWorthwhile());
    }

    private Unit unit() {
        return answer.question().measure().unit();
    }

    private static double minutes(double seconds) {
        return Units.MINUTE.fromSi(seconds);
    }

    private static OptionalDouble minutes(OptionalDouble seconds) {
        return seconds.isPresent() ? OptionalDouble.of(minutes(seconds.getAsDouble())) : seconds;
    }
}

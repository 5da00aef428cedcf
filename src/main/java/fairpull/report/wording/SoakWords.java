package fairpull.report.wording;

import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.heat.CoolDownFit;
import fairpull.domain.heat.CoolDownLog;
import fairpull.domain.heat.FittedMode;
import fairpull.domain.heat.ModeChoice;
import fairpull.domain.heat.Sensitivity;
import fairpull.domain.heat.SoakAnswer;
import fairpull.domain.heat.SoakPlan;
import fairpull.domain.heat.SoakQuestion;
import fairpull.domain.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the heat asks of a day: the fit, the interval, the warm-ups, and what is left on the deciding measure. */
public final class SoakWords {
    private SoakWords() {
    }

    /** {@return the answer in a few words} */
    public static String heading(SoakAnswer answer) {
        SoakPlan plan = answer.plan();
        SoakQuestion.Day day = answer.question().day();
        if (answer.cannotSay()) {
            return "This log cannot say";
        }
        if (!plan.isHeld()) {
            return "Pulls every " + HeatNumbers.time(day.intervalS()) + " cannot be held within " + tolerance(answer);
        }
        int first = plan.warmUpsFirst().getAsInt();
        return "Pulls every " + HeatNumbers.time(day.intervalS()) + (first == 0 ? " need no warm-up pull"
                : " need " + Numbers.count(first, "warm-up pull") + " first");
    }

    /** {@return the plan in sentences; only what to do where the log cannot say} */
    public static List<String> plan(SoakAnswer answer) {
        return plan(answer, Surface.COMMAND_LINE);
    }

    /** {@return the same for a surface} */
    public static List<String> plan(SoakAnswer answer, Surface surface) {
        if (answer.cannotSay()) {
            return List.of("Log 30" + Numbers.THIN + "min or more, until the temperature hardly falls" + (answer.choice().filter(choice ->
                    choice.chosen().ambientGiven()).isPresent() ? "."
                    : ", and give " + HeatNoticeWords.AMBIENT.on(surface) + "."));
        }
        SoakPlan plan = answer.plan();
        SoakQuestion question = answer.question();
        List<String> sentences = new ArrayList<>();
        sentences.add("One pull adds " + HeatNumbers.kelvin(question.pullRiseK()) + (plan.coolsWithinS() == 0
                ? ", less than the tolerance." : "; that has fallen to " + tolerance(answer) + " after "
                + HeatNumbers.intervalUp(plan.coolsWithinS()) + "."));
        sentences.add(holding(answer));
        sentences.add("At " + HeatNumbers.time(question.day().intervalS()) + " from pull to pull the start temperature settles "
                + HeatNumbers.kelvin(plan.settledRiseK()) + " above ambient.");
        sentences.add(warmUps(answer));
        return sentences;
    }

    private static String holding(SoakAnswer answer) {
        SoakPlan plan = answer.plan();
        if (plan.intervalWithoutWarmUpsS() == 0) {
            return "Any interval holds the start temperature within " + tolerance(answer) + ".";
        }
        String ends = plan.holdingInterval().lowS().isPresent() ? " (95" + Numbers.THIN + "% interval "
                + HeatNumbers.times(plan.holdingInterval().lowS().getAsDouble(), plan.holdingInterval().highS().getAsDouble()) + ")" : "";
        return "Without any warm-up, " + HeatNumbers.intervalUp(plan.intervalWithoutWarmUpsS()) + ends
                + " from pull to pull holds every start within " + tolerance(answer) + " of the first, however many pulls follow.";
    }

    private static String warmUps(SoakAnswer answer) {
        SoakPlan plan = answer.plan();
        SoakQuestion.Day day = answer.question().day();
        if (plan.warmUpsFirst().isEmpty()) {
            return "No number of warm-up pulls up to " + SoakPlan.MOST_WARM_UPS + " is enough in the first install.";
        }
        String first = "For the pulls planned the first install needs " + Numbers.count(plan.warmUpsFirst().getAsInt(), "warm-up pull");
        if (day.letters().length() == 1) {
            return first + ".";
        }
        String later = plan.warmUpsAfterSwap().isEmpty() ? "; after a swap no number up to " + SoakPlan.MOST_WARM_UPS + " is enough."
                : "; after a swap of " + HeatNumbers.time(day.swapS()) + ", " + plan.warmUpsAfterSwap().getAsInt() + ".";
        return first + later;
    }

    /** {@return what is left on the deciding measure} */
    public static List<Said> bias(SoakAnswer answer) {
        return bias(answer, Surface.COMMAND_LINE);
    }

    /** {@return the same for a surface} */
    public static List<Said> bias(SoakAnswer answer, Surface surface) {
        SoakPlan plan = answer.plan();
        List<Said> said = new ArrayList<>();
        if (answer.cannotSay()) {
            return said;
        }
        if (answer.question().day().letters().contains("A") && answer.question().day().letters().contains("B")) {
            if (plan.isHeld()) {
                said.add(new Said("Left on B − A with these warm-ups", bias(plan.bias(), answer)));
            }
            said.add(new Said("With no warm-ups at all", bias(plan.biasWithoutWarmUps(), answer)));
        }
        said.add(new Said("Two pulls " + tolerance(answer) + " apart", bias(plan.gateBias(), answer)));
        said.add(new Said("Sensitivity", sensitivity(answer.question().sensitivity(), surface)));
        return said;
    }

    private static String bias(SoakPlan.Bias bias, SoakAnswer answer) {
        Unit unit = answer.question().measure().unit();
        String percent = Numbers.resolving(bias.relative() * 100, "%").signed(bias.relative() * 100);
        if (Math.abs(bias.relative()) < 5e-7) {
            return "nothing";
        }
        if (bias.si().isEmpty()) {
            return percent;
        }
        double own = unit.differenceFromSi(bias.si().getAsDouble());
        return Numbers.resolving(own, unit.symbol()).signed(own) + " (" + percent + ")" + (bias.shareOfWorthwhile().isPresent()
                ? ", " + HeatNumbers.share(bias.shareOfWorthwhile().getAsDouble()) + " of the worthwhile gain" : "");
    }

    /** {@return how the measure was taken to follow the temperature} */
    private static String sensitivity(Sensitivity sensitivity, Surface surface) {
        return sensitivity.match(new Sensitivity.Cases<>() {
            @Override
            public String inletRule() {
                return "spark-ignition power goes with √(T₀/T) of the absolute inlet temperature, the temperature term of EEC 80/1269 "
                        + "(from memory), about −0.17" + Numbers.THIN + "%/K; for coolant, oil or a boosted engine "
                        + new Remedy("give --sensitivity", "it is another").on(surface);
            }

            @Override
            public String perKelvin(double relativePerK) {
                return Numbers.given(relativePerK * 100, "%/K") + ", as given";
            }
        });
    }

    /** {@return what was fitted, in figures} */
    public static List<Said> fit(ModeChoice choice) {
        CoolDownFit fit = choice.chosen();
        List<Said> said = new ArrayList<>();
        said.add(new Said(fit.modes().size() == 1 ? "Time constant" : "Time constants",
                fit.modes().stream().map(SoakWords::mode).collect(Collectors.joining("; "))));
        said.add(new Said("Ambient", HeatNumbers.celsius(fit.ambientK()) + (fit.ambientGiven() ? ", given"
                : ", fitted, standard error " + HeatNumbers.kelvin(fit.ambientErrorK()))));
        said.add(new Said("Readings about the curve", "standard deviation " + HeatNumbers.kelvin(fit.residualDeviationK()) + ", "
                + Numbers.degreesOfFreedom(fit.degreesOfFreedom()) + " degrees of freedom"));
        said.add(new Said("One time constant or two", reason(choice)));
        return said;
    }

    private static String mode(FittedMode mode) {
        return HeatNumbers.time(mode.timeConstantS()) + " (95" + Numbers.THIN + "% interval " + HeatNumbers.times(mode.lowS(), mode.highS())
                + "), from " + HeatNumbers.kelvin(mode.amplitudeK()) + " at the start";
    }

    /** {@return why one time constant is used, or two} */
    public static String reason(ModeChoice choice) {
        String figures = choice.pValue().isPresent() ? " (F test of the second " + Numbers.p(choice.pValue().getAsDouble()) + ")" : "";
        return switch (choice.reason()) {
            case TWO_SUPPORTED -> "two: the log supports both" + figures;
            case TOO_FEW_READINGS -> "one: too few readings to ask for two";
            case NOT_TOLD_APART -> "one: a second cannot be told from the first" + figures;
            case NEGATIVE_AMPLITUDE -> "one: a second would be heat arriving, not leaving" + figures;
            case NO_BETTER_THAN_CHANCE -> "one: a second explains no more than chance would" + figures;
            case NOT_WORTH_ITS_PARAMETERS -> "one: a second is not worth its two parameters (corrected Akaike criterion)" + figures;
            case AMPLITUDES_CORRELATED -> "one: the amplitudes of two would be interchangeable (correlation beyond 0.99)" + figures;
            case TIME_CONSTANT_LOOSE -> "one: of two, one would not be known within a factor" + figures;
        };
    }

    /** {@return the rule by which one or two time constants are taken} */
    public static String rule() {
        return "Two time constants are taken only if the log has at least 12 readings, both amplitudes are positive, the F test "
                + "of the second has p below 0.01, the corrected Akaike criterion falls, the amplitudes are not correlated beyond 0.99, "
                + "and ln τ of each has a standard error below 0.5.";
    }

    /** {@return the tolerance with its sign} */
    public static String tolerance(SoakAnswer answer) {
        return HeatNumbers.kelvin(answer.question().toleranceK());
    }

    /** {@return what the answer is about, in a line} */
    public static String subject(SoakAnswer answer) {
        SoakQuestion.Day day = answer.question().day();
        String source = answer.log().map(log -> "“" + log.column() + "”, " + readings(log) + " over " + HeatNumbers.time(log.spanS()))
                .orElse("Time constants typed in");
        return source + "; " + day.letters() + " with " + Numbers.count(day.pulls(), "counted pull") + " per install, "
                + HeatNumbers.time(day.intervalS()) + " from pull to pull, " + HeatNumbers.time(day.swapS()) + " more at a swap";
    }

    private static String readings(CoolDownLog log) {
        return log.readingsEach() == 1 ? log.size() + " readings"
                : log.size() + " means of " + log.readingsEach() + " readings each";
    }

    /** {@return over the fitted curve} */
    public static String fitHeading(ModeChoice choice) {
        return choice.isTwo() ? "The log shows two time constants" : "The log shows one time constant";
    }

    /** {@return what the marks of the fitted curve mean} */
    public static String fitCaption(int readingsPerDot) {
        return (readingsPerDot == 1 ? "Each dot is a reading" : "One dot stands for every " + readingsPerDot + " readings")
                + ", the line the fitted curve. Beneath, what the curve leaves over; the band is two standard deviations to each side.";
    }

    /** {@return what the marks of the day mean} */
    public static String dayCaption(SoakAnswer answer) {
        return "A disc is a counted pull, a ring a warm-up; A is blue, B copper. The band is " + tolerance(answer)
                + " to each side of the reference pull, the first counted one.";
    }

    /** {@return an interval that holds} */
    public static String interval(SoakPlan.Holding holding) {
        return holding.intervalS() == 0 ? "any" : HeatNumbers.intervalUp(holding.intervalS());
    }

    /** {@return over the table of intervals} */
    public static String intervals(SoakAnswer answer) {
        return "With so many warm-up pulls in the first install, every later pull of that install starts within " + tolerance(answer)
                + " of the first counted one, however many follow, if they follow no quicker than this. A planned day has fewer pulls and "
                + "may need less.";
    }

    /** {@return what stands at the foot of the page} */
    public static String foot() {
        return "Each pull is taken to add its heat at once, and the car to cool towards a steady ambient as fitted; the day begins at "
                + "ambient. It holds for this car in this state, this fan and this place, and for nothing else.";
    }
}

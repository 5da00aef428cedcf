package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.MeasureText;
import fairpull.app.usecase.typing.Order;
import fairpull.app.usecase.typing.StandardGates;
import fairpull.app.usecase.typing.Typed;
import fairpull.app.usecase.typing.TypedLooks;
import fairpull.domain.finding.Notice.Severity;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Sides;
import fairpull.domain.unit.Amount;
import fairpull.engine.planning.PlanReview;
import fairpull.io.folder.TestFolder;
import fairpull.report.wording.NoticeWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Makes a new test from what a person types. */
public final class NewPlan {
    private NewPlan() {
    }

    /**
     * A plan in words and amounts as typed; null where an option was not given.
     *
     * @param title what the test is called
     * @param remark what a reader should know first
     * @param question what is asked
     * @param rig what it is run on
     * @param order the sequence and its clock
     */
    public record Request(String title, String remark, Asked question, RigTyped rig, OrderTyped order) {
    }

    /**
     * The question as typed.
     *
     * @param partA the reference state
     * @param partB the changed state
     * @param measure the deciding measure, as {@link MeasureText} reads it
     * @param further the measures beside it
     * @param correction the standard that power and torque are brought to
     * @param expected the level expected under A
     * @param worthwhile the worthwhile gain
     * @param sides either way, or only for a gain
     * @param errorRate how often a change may be announced where there is none
     * @param powerWanted the chance wanted of finding the worthwhile gain
     * @param claims gains to be checked, as typed
     * @param drift how drift is modelled
     * @param covariates conditions whose slope is taken out
     * @param curve how pulls become curves
     */
    public record Asked(String partA, String partB, String measure, List<String> further, Correction correction, String expected,
            String worthwhile, Sides sides, double errorRate, double powerWanted, List<String> claims, Drift drift,
            List<Condition> covariates, CurveTyped curve) {
    }

    /**
     * How pulls become curves, as typed; null where an option was not given.
     *
     * @param bandwidth the bandwidth to which curves are smoothed
     * @param grid the speeds at which they are compared, as {@link TypedCurve} reads it; null where the pulls settle them
     * @param tipIn what is dropped after full throttle: engine speeds and times
     * @param liftOff what is dropped before lift-off, likewise
     */
    public record CurveTyped(String bandwidth, String grid, List<String> tipIn, List<String> liftOff) {
    }

    /**
     * The rig as typed.
     *
     * @param name which one
     * @param kind what kind
     * @param gear the gear used
     * @param pullScatter scatter of pulls
     * @param pullDf its degrees of freedom
     * @param refitScatter scatter of refits
     * @param refitDf its degrees of freedom
     * @param records the folder of rig records to take the matching one from
     * @param startingGuess whether a labelled guess is taken where there is no record
     * @param motion what a pull accelerates
     */
    public record RigTyped(String name, Rig.Kind kind, String gear, String pullScatter, String pullDf, String refitScatter,
            String refitDf, Path records, boolean startingGuess, TypedMotion.Typing motion) {
    }

    /**
     * The order as typed.
     *
     * @param letters A and B in order, sessions parted by a bar; with a seed only the counts matter, the order is drawn
     * @param seed of the draw; empty where the order is chosen
     * @param pulls counted pulls per install
     * @param warmUps warm-up pulls per install
     * @param interval minutes from pull to pull
     * @param swap minutes that a swap adds
     * @param setUp minutes before the first pull of a session
     * @param strapsStay whether the swap leaves the straps alone
     * @param looks when the data are looked at, as {@link TypedLooks} reads it; null where only at the end
     * @param hours the working hours
     */
    public record OrderTyped(String letters, OptionalLong seed, int pulls, int warmUps, String interval, String swap, String setUp,
            boolean strapsStay, String looks, HoursTyped hours) {
    }

    /**
     * The working hours as typed: for all sessions, or one for each, parted by a bar.
     *
     * @param start start of day, {@code 9:00}; null where it is not planned
     * @param end end of day; null where it is open
     * @param breaks start and minutes of each break, {@code 12:30+45}; the same in every session
     */
    public record HoursTyped(String start, String end, List<String> breaks) {
    }

    /**
     * A plan, and where its scatter is from.
     *
     * @param plan the plan
     * @param scatterSaid where its scatter figures are from, in sentences; empty where they were typed in or there are none
     * @param warnings what is to be known of its looks, in sentences
     */
    public record Made(Plan plan, List<String> scatterSaid, List<String> warnings) {
    }

    /** Makes the test in a folder; returns its plan. */
    public static Made make(Path folder, Request request) throws IOException {
        Made made = plan(request);
        TestFolder.create(folder, made.plan());
        return made;
    }

    private static Made plan(Request request) throws IOException {
        try {
            Asked asked = request.question();
            Measure deciding = MeasureText.parse(asked.measure(), asked.correction());
            OptionalDouble expected = asked.expected() == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Typed.levelSi("--expected", asked.expected(), deciding));
            Typed typed = new Typed(deciding, expected);
            OptionalDouble bandwidth = Typed.bandwidth("--bandwidth", asked.curve().bandwidth());
            PlanScatter scatter = PlanScatter.of(request.rig(), deciding, expected, bandwidth, !request.order().strapsStay());
            Rig rig = rig(request.rig(), scatter);
            Plan plan = new Plan(request.title(), request.remark(), question(asked, deciding, expected, typed),
                    new Analysis(asked.drift(), asked.covariates()), rig, sequence(request.order()), StandardGates.of(rig.kind()),
                    StandardGates.checklist(), TypedLooks.parse("--looks", request.order().looks()),
                    TypedCurve.of(bandwidth, asked.curve()));
            List<String> warnings = PlanReview.ofLooks(plan).stream()
                    .filter(notice -> notice.code().severity() == Severity.WARNING)
                    .map(notice -> NoticeWords.sentence(notice, deciding.unit().symbol())).toList();
            return new Made(plan, scatter.said(), warnings);
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException("plan", contradiction.getMessage());
        }
    }

    private static Question question(Asked asked, Measure deciding, OptionalDouble expected, Typed typed) {
        List<Measure> further = asked.further().stream().map(text -> MeasureText.parse(text, asked.correction())).toList();
        OptionalDouble worthwhile = asked.worthwhile() == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(typed.differenceSi("--worthwhile", asked.worthwhile()));
        List<Claim> claims = new ArrayList<>();
        for (String claim : asked.claims()) {
            claims.add(claim("--claim", claim, deciding, typed));
        }
        return new Question(asked.partA(), asked.partB(), deciding, further, expected, worthwhile, asked.sides(), asked.errorRate(),
                asked.powerWanted(), claims);
    }

    /** An amount, and behind an @ or the word “at” the engine speed at which it is claimed. */
    public static Claim claim(String option, String text, Measure deciding, Typed typed) {
        String[] parts = text.replaceFirst("^\\s*at least\\b", "").split("@|\\bat\\b", 2);
        double atLeastSi = typed.differenceSi(option, parts[0].strip());
        String words = "at least " + Typed.words(parts[0].strip(), deciding);
        if (parts.length == 1) {
            return new Claim(words, deciding.name(), atLeastSi);
        }
        Amount speed = Typed.engineSpeed(option, parts[1].strip());
        return new Claim(words + " at " + speed.words(), deciding.name(), atLeastSi, OptionalDouble.of(speed.si()));
    }

    private static Rig rig(RigTyped rig, PlanScatter scatter) {
        return new Rig(rig.name(), rig.kind(), OptionalDouble.empty(), rig.gear(), OptionalDouble.empty(), List.of(), scatter.pull(),
                scatter.refit(), TypedMotion.parse(rig.motion()));
    }

    private static Sequence sequence(OrderTyped order) {
        return WorkingHours.of(order.hours()).given(Order.sequence(order.letters(), order.seed(),
                new Order.Filling(order.pulls(), order.warmUps(), !order.strapsStay()),
                new Order.Times(Typed.minutesAsSeconds("--interval", order.interval()), Typed.minutesAsSeconds("--swap", order.swap()),
                        Typed.minutesAsSeconds("--set-up", order.setUp()))));
    }
}

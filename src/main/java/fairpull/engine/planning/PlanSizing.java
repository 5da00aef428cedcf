package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Asks what a plan can see. Where installs differ the plan is sized as if each had the fewest counted pulls and the most warm-ups of
 * any, which never promises too much. Figures are in the unit of the deciding measure.
 */
public final class PlanSizing {
    private static final double SECONDS_A_MINUTE = 60;

    private PlanSizing() {
    }

    /** {@return the sizing of a plan; empty without scatter figures or a worthwhile gain} */
    public static Optional<SizeQuestion> question(Plan plan) {
        OptionalDouble worthwhile = plan.question().worthwhileGainSi();
        return worthwhile.isEmpty() ? Optional.empty() : question(plan, plan.sequence(), worthwhile.getAsDouble());
    }

    /** {@return the smallest gain that a plan finds with the power wanted were its sequence another; empty without scatter figures} */
    static OptionalDouble detectableGain(Plan plan, Sequence sequence) {
        // the detectable gain does not depend on the gain that is asked for
        double anyGain = plan.rig().pullScatter().map(Scatter::standardDeviationSi).orElse(1.0);
        return question(plan, sequence, anyGain).map(Sizing::figures).map(answer -> answer.detectableGain())
                .orElse(OptionalDouble.empty());
    }

    /**
     * The smallest gain that days find which are no longer as planned, with whatever pulls each install has, looked at once at the end.
     *
     * @param plan scatter, test and drift
     * @param days their clocks
     * @return in the unit of the measure; empty without scatter figures, and where the days could not be judged
     */
    public static OptionalDouble detectableGainOn(Plan plan, List<DayClock> days) {
        double anyGain = plan.rig().pullScatter().map(Scatter::standardDeviationSi).orElse(1.0);
        return question(plan.withLooks(Optional.empty()), plan.sequence(), anyGain).map(question -> Sizing.detectableGain(question, days))
                .orElse(OptionalDouble.empty());
    }

    /** {@return order, test and clock of a plan, with scatter and gain of 1 where only its layout is asked for} */
    public static SizeQuestion layout(Plan plan) {
        Scatter one = new Scatter(1, 0, Scatter.Origin.STARTING_GUESS);
        return question(plan, plan.sequence(), one, one, 1);
    }

    private static Optional<SizeQuestion> question(Plan plan, Sequence sequence, double gainSi) {
        Optional<Scatter> pull = plan.rig().pullScatter();
        return plan.rig().refitScatter().flatMap(refit -> pull.map(known -> question(plan, sequence, known, refit, gainSi)));
    }

    private static SizeQuestion question(Plan plan, Sequence sequence, Scatter pull, Scatter refit, double gainSi) {
        Question question = plan.question();
        Unit unit = question.deciding().unit();
        int fewestPulls = sequence.installs().mapToInt(Install::countedPulls).min().orElseThrow();
        int mostWarmUps = sequence.installs().mapToInt(Install::warmUpPulls).max().orElseThrow();
        return new SizeQuestion(sequence.letters(), fewestPulls, mostWarmUps,
                unit.differenceFromSi(pull.standardDeviationSi()), pull.degreesOfFreedom(),
                unit.differenceFromSi(refit.standardDeviationSi()), refit.degreesOfFreedom(),
                unit.differenceFromSi(gainSi), question.powerWanted(), question.errorRate(), question.sides(), plan.analysis().drift(),
                clock(sequence), sequence.equals(plan.sequence()) ? plan.looks() : Optional.empty());
    }

    private static SizeQuestion.Clock clock(Sequence sequence) {
        return new SizeQuestion.Clock(sequence.pullIntervalS() / SECONDS_A_MINUTE, sequence.swapS() / SECONDS_A_MINUTE,
                sequence.setUpS() / SECONDS_A_MINUTE, sequence.sessions().stream().map(Session::hours).toList());
    }
}

package fairpull.engine.planning;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.unit.Unit;
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

    private static Optional<SizeQuestion> question(Plan plan, Sequence sequence, double gainSi) {
        Question question = plan.question();
        Optional<Scatter> pull = plan.rig().pullScatter();
        Optional<Scatter> refit = plan.rig().refitScatter();
        if (pull.isEmpty() || refit.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = question.deciding().unit();
        int fewestPulls = sequence.installs().mapToInt(Install::countedPulls).min().orElseThrow();
        int mostWarmUps = sequence.installs().mapToInt(Install::warmUpPulls).max().orElseThrow();
        return Optional.of(new SizeQuestion(sequence.letters(), fewestPulls, mostWarmUps,
                unit.differenceFromSi(pull.get().standardDeviationSi()), pull.get().degreesOfFreedom(),
                unit.differenceFromSi(refit.get().standardDeviationSi()), refit.get().degreesOfFreedom(),
                unit.differenceFromSi(gainSi), question.powerWanted(), question.errorRate(), question.sides(), plan.analysis().drift(),
                clock(sequence)));
    }

    private static SizeQuestion.Clock clock(Sequence sequence) {
        return new SizeQuestion.Clock(sequence.pullIntervalS() / SECONDS_A_MINUTE, sequence.swapS() / SECONDS_A_MINUTE,
                sequence.setUpS() / SECONDS_A_MINUTE, sequence.sessions().stream().map(Session::hours).toList());
    }
}

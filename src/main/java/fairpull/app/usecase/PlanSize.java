package fairpull.app.usecase;

import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import java.util.Optional;

/** A plan as the sizing sees it. */
final class PlanSize {
    private static final double SECONDS_A_MINUTE = 60;

    private PlanSize() {
    }

    /** {@return the sizing of a plan; empty without scatter figures or a worthwhile gain} */
    static Optional<SizeQuestion> question(Plan plan) {
        Optional<Scatter> pull = plan.rig().pullScatter();
        Optional<Scatter> refit = plan.rig().refitScatter();
        if (pull.isEmpty() || refit.isEmpty() || plan.question().worthwhileGainSi().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(question(plan, pull.get(), refit.get(), plan.question().worthwhileGainSi().getAsDouble()));
    }

    /** {@return order and clock of a plan, with scatter and gain of 1 where only its layout is asked for} */
    static SizeQuestion layout(Plan plan) {
        Scatter one = new Scatter(1, 0, Scatter.Origin.STARTING_GUESS);
        return question(plan, one, one, 1);
    }

    private static SizeQuestion question(Plan plan, Scatter pull, Scatter refit, double gainSi) {
        Question question = plan.question();
        Measure measure = question.deciding();
        int fewestPulls = plan.sequence().installs().mapToInt(Install::countedPulls).min().orElseThrow();
        int mostWarmUps = plan.sequence().installs().mapToInt(Install::warmUpPulls).max().orElseThrow();
        return new SizeQuestion(plan.sequence().letters(), fewestPulls, mostWarmUps,
                measure.unit().differenceFromSi(pull.standardDeviationSi()), pull.degreesOfFreedom(),
                measure.unit().differenceFromSi(refit.standardDeviationSi()), refit.degreesOfFreedom(),
                measure.unit().differenceFromSi(gainSi), question.powerWanted(), question.errorRate(),
                question.sides(), plan.analysis().drift(), new SizeQuestion.Clock(plan.sequence().pullIntervalS() / SECONDS_A_MINUTE,
                        plan.sequence().swapS() / SECONDS_A_MINUTE, plan.sequence().setUpS() / SECONDS_A_MINUTE), plan.looks());
    }
}

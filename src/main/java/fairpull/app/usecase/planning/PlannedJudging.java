package fairpull.app.usecase.planning;

import fairpull.app.usecase.typing.Order;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.ScatterRecord;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a plan has its measures judged. */
public final class PlannedJudging {
    private PlannedJudging() {
    }

    /** The records and the worthwhile gain of the plan are those of the deciding measure; further ones are judged by their own data. */
    public static JudgeSettings settings(Plan plan, Measure measure) {
        Question question = plan.question();
        boolean decides = measure.equals(question.deciding());
        List<String> covariates = plan.analysis().covariates().stream().map(Condition::id).toList();
        OptionalDouble worthwhile = decides && question.worthwhileGainSi().isPresent()
                ? OptionalDouble.of(measure.unit().differenceFromSi(question.worthwhileGainSi().getAsDouble()))
                : OptionalDouble.empty();
        return new JudgeSettings(plan.analysis().drift(), covariates, record(decides, plan.rig().pullScatter(), measure),
                record(decides, plan.rig().refitScatter(), measure), worthwhile, question.errorRate(), question.sides(), measure.better(),
                plan.sequence().origin() == Sequence.Origin.DRAWN && Order.isAsDrawn(plan.sequence()));
    }

    private static Optional<ScatterRecord> record(boolean decides, Optional<Scatter> scatter, Measure measure) {
        return scatter.filter(known -> decides && known.isRecord()).map(known -> new ScatterRecord(
                measure.unit().differenceFromSi(known.standardDeviationSi()), known.degreesOfFreedom(), known.isGuess()));
    }
}

package fairpull.app.usecase.planning;

import fairpull.app.usecase.typing.MeasureText;
import fairpull.app.usecase.typing.Order;
import fairpull.app.usecase.typing.StandardGates;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.plan.Analysis;
import fairpull.domain.plan.Claim;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Rig;
import fairpull.domain.plan.Scatter;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Sides;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** The invented test that the window shows at its first start. */
public final class ExamplePlan {
    private static final int REFITS_BEHIND = 11;

    private ExamplePlan() {
    }

    /** {@return a plan with everything said, not sealed} */
    public static Plan plan() {
        Measure deciding = MeasureText.parse("mean power 3000-6500 rpm in hp", Correction.NONE);
        double level = Typed.levelSi("", "190hp", deciding);
        Typed typed = new Typed(deciding, OptionalDouble.of(level));
        double worthwhile = typed.differenceSi("", "3hp");
        Question question = new Question("belt-driven water pump", "electric water pump", deciding,
                List.of(MeasureText.parse("peak power in hp", Correction.NONE)), OptionalDouble.of(level), OptionalDouble.of(worthwhile),
                Sides.TWO, 0.05, 0.8, List.of(new Claim("at least 5 hp", deciding.name(), typed.differenceSi("", "5hp"))));
        Rig rig = new Rig("rollers 1", Rig.Kind.ROLLER_INERTIA, OptionalDouble.empty(), "4", OptionalDouble.empty(), List.of(),
                Optional.of(new Scatter(typed.differenceSi("", "0.6%"), 0, Scatter.Origin.TYPED_IN)),
                Optional.of(new Scatter(typed.differenceSi("", "0.9hp"), REFITS_BEHIND, Scatter.Origin.RIG_RECORD)));
        return new Plan("Electric water pump against belt-driven pump",
                "An invented example: no car was run; there is no make, model, part, shop or person behind it.", question,
                new Analysis(Drift.LINEAR, List.of()), rig, day(), StandardGates.of(rig.kind()), StandardGates.checklist());
    }

    private static Sequence day() {
        Sequence sequence = Order.sequence("ABABA", OptionalLong.empty(), new Order.Filling(5, 2, true),
                new Order.Times(4 * 60, 8 * 60, 30 * 60));
        Hours hours = new Hours(LocalTime.of(9, 0), Optional.of(LocalTime.of(17, 0)), List.of());
        return sequence.withLabelled(sequence.sessions().stream().map(session -> session.with(hours)).toList());
    }
}

package fairpull.domain.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A test as it is planned and sealed.
 *
 * @param title what the test is called
 * @param remark what a reader should know first; invented data say here that they are invented
 * @param question what is to be answered
 * @param analysis how it will be judged
 * @param rig what it is run on
 * @param sequence the order of installs and its clock
 * @param gates conditions before a pull
 * @param checklist what is ticked off on the day
 * @param looks when the data are looked at before the end; empty where only at the end
 * @param curve how pulls become curves over engine speed; empty where they are taken as exported
 */
public record Plan(String title, String remark, Question question, Analysis analysis, Rig rig, Sequence sequence, List<Gate> gates,
        List<String> checklist, Optional<Looks> looks, Optional<CurveSettings> curve) {
    public Plan {
        Checks.named("a plan", title);
        Objects.requireNonNull(remark, "remark");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(analysis, "analysis");
        Objects.requireNonNull(rig, "rig");
        Objects.requireNonNull(sequence, "sequence");
        gates = List.copyOf(gates);
        checklist = List.copyOf(checklist);
        Objects.requireNonNull(curve, "curve");
        looks.ifPresent(planned -> planned.requireFit(sequence.letters()));
    }

    /** A plan that is looked at once, at the end, with curves as exported. */
    public Plan(String title, String remark, Question question, Analysis analysis, Rig rig, Sequence sequence, List<Gate> gates,
            List<String> checklist) {
        this(title, remark, question, analysis, rig, sequence, gates, checklist, Optional.empty(), Optional.empty());
    }

    /** {@return the bandwidth to which curves are smoothed; empty where they are taken as exported} */
    public OptionalDouble bandwidthRadPerS() {
        return curve.map(CurveSettings::bandwidthRadPerS).orElseGet(OptionalDouble::empty);
    }

    /** {@return what is dropped of every sweep before it is scored; empty where all of it counts} */
    public Optional<ScoredWindow> scoredWindow() {
        return curve.flatMap(CurveSettings::scored);
    }

    /** {@return the same plan with another sequence} */
    public Plan with(Sequence other) {
        return new Plan(title, remark, question, analysis, rig, other, gates, checklist, looks, curve);
    }
}

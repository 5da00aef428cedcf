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

    /** {@return the same plan under another title} */
    public Plan titled(String other) {
        return new Plan(other, remark, question, analysis, rig, sequence, gates, checklist, looks, curve);
    }

    /** {@return the same plan with another remark} */
    public Plan remarked(String other) {
        return new Plan(title, other, question, analysis, rig, sequence, gates, checklist, looks, curve);
    }

    /** {@return the same plan with another question} */
    public Plan with(Question other) {
        return new Plan(title, remark, other, analysis, rig, sequence, gates, checklist, looks, curve);
    }

    /** {@return the same plan with another analysis} */
    public Plan with(Analysis other) {
        return new Plan(title, remark, question, other, rig, sequence, gates, checklist, looks, curve);
    }

    /** {@return the same plan on another rig} */
    public Plan with(Rig other) {
        return new Plan(title, remark, question, analysis, other, sequence, gates, checklist, looks, curve);
    }

    /** {@return the same plan with another sequence; planned looks that have no place in it are given up} */
    public Plan resequenced(Sequence other) {
        return new Plan(title, remark, question, analysis, rig, other, gates, checklist,
                looks.filter(planned -> planned.fits(other.letters())), curve);
    }

    /** {@return the same plan with other curve settings} */
    public Plan withCurve(Optional<CurveSettings> other) {
        return new Plan(title, remark, question, analysis, rig, sequence, gates, checklist, looks, other);
    }

    /** {@return the same plan with other gates} */
    public Plan withGates(List<Gate> others) {
        return new Plan(title, remark, question, analysis, rig, sequence, others, checklist, looks, curve);
    }

    /** {@return the same plan with another checklist} */
    public Plan withChecklist(List<String> others) {
        return new Plan(title, remark, question, analysis, rig, sequence, gates, others, looks, curve);
    }

    /** {@return the same plan with other looks} */
    public Plan withLooks(Optional<Looks> others) {
        return new Plan(title, remark, question, analysis, rig, sequence, gates, checklist, others, curve);
    }
}

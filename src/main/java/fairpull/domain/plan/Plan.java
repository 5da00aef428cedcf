package fairpull.domain.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
 */
public record Plan(String title, String remark, Question question, Analysis analysis, Rig rig, Sequence sequence, List<Gate> gates,
        List<String> checklist, Optional<Looks> looks) {
    public Plan {
        Checks.named("a plan", title);
        Objects.requireNonNull(remark, "remark");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(analysis, "analysis");
        Objects.requireNonNull(rig, "rig");
        Objects.requireNonNull(sequence, "sequence");
        gates = List.copyOf(gates);
        checklist = List.copyOf(checklist);
        looks.ifPresent(planned -> planned.requireFit(sequence.letters()));
    }

    /** A plan that is looked at once, at the end. */
    public Plan(String title, String remark, Question question, Analysis analysis, Rig rig, Sequence sequence, List<Gate> gates,
            List<String> checklist) {
        this(title, remark, question, analysis, rig, sequence, gates, checklist, Optional.empty());
    }
}

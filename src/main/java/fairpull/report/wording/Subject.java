package fairpull.report.wording;

import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import java.util.Objects;

/**
 * What a finding is about, in the words of whoever asked.
 *
 * @param measure the measure in words
 * @param partA the reference state in words; empty where only its letter is known
 * @param partB the changed state in words; empty where only its letter is known
 */
public record Subject(String measure, String partA, String partB) {
    public Subject {
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(partA, "partA");
        Objects.requireNonNull(partB, "partB");
    }

    /** {@return the subject of one measure of a plan} */
    public static Subject of(Plan plan, Measure measure) {
        return new Subject(measure.name(), plan.question().partA(), plan.question().partB());
    }

    /** {@return a subject of which only the measure has a name} */
    public static Subject of(String measure) {
        return new Subject(measure, "", "");
    }

    String a() {
        return partA.isBlank() ? "A" : "A (" + partA.strip() + ")";
    }

    String b() {
        return partB.isBlank() ? "B" : "B (" + partB.strip() + ")";
    }
}

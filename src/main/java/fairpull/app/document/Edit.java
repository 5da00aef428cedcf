package fairpull.app.document;

import fairpull.domain.plan.Plan;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * One change of a plan.
 *
 * @param label what it does, as it stands behind “Undo”
 * @param field what it belongs to; edits of one field that follow each other are undone together, empty for one that stands alone
 * @param change makes the plan that follows; throws {@link IllegalArgumentException} where there is none, in words for people
 */
public record Edit(String label, String field, UnaryOperator<Plan> change) {
    public Edit {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(change, "change");
    }

    /** {@return an edit that is undone on its own} */
    public static Edit step(String label, UnaryOperator<Plan> change) {
        return new Edit(label, "", change);
    }

    /** {@return an edit of a field in which people type: it is undone together with its like} */
    public static Edit typing(String label, String field, UnaryOperator<Plan> change) {
        return new Edit(label, field, change);
    }
}

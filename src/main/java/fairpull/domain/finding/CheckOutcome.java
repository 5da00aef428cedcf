package fairpull.domain.finding;

import java.util.List;
import java.util.Optional;

/**
 * What came of one check of the pulls.
 *
 * @param code what is raised if it does not hold
 * @param state what came of it
 * @param figures those that the code documents, of the worst pull; none where the check does not apply
 * @param names the pulls that it is raised for
 */
public record CheckOutcome(Notice.Code code, State state, List<Double> figures, List<String> names) {
    /** What can come of a check. */
    public enum State {
        RAISED, CLEAR, NOT_APPLICABLE
    }

    public CheckOutcome {
        figures = List.copyOf(figures);
        names = List.copyOf(names);
    }

    /** {@return an outcome of a check that no pull holds enough for} */
    public static CheckOutcome notApplicable(Notice.Code code) {
        return new CheckOutcome(code, State.NOT_APPLICABLE, List.of(), List.of());
    }

    /** {@return raised where any pull is named, clear otherwise} */
    public static CheckOutcome naming(Notice.Code code, List<Double> figures, List<String> names) {
        return new CheckOutcome(code, names.isEmpty() ? State.CLEAR : State.RAISED, figures, names);
    }

    /** {@return what a reader must know, where it is raised} */
    public Optional<Notice> notice() {
        return state == State.RAISED ? Optional.of(new Notice(code, figures, names)) : Optional.empty();
    }
}

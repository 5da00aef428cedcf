package fairpull.ui.page.audit;

import fairpull.ui.page.Leaf;
import java.util.Optional;

/** One page of an audit. */
public interface AuditPage extends Leaf {
    /** {@return why the page cannot be reached yet; empty where it can} */
    default Optional<String> notYet() {
        return Optional.empty();
    }

    /** {@return what was begun on the page and is no part of the audit yet, in words; empty for nothing} */
    default Optional<String> begun() {
        return Optional.empty();
    }
}

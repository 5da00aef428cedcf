package fairpull.ui.page;

import fairpull.app.document.Document;
import java.util.Optional;

/** One page of the work on a test. */
public interface Page extends Leaf {
    /** {@return why the page cannot be reached yet; empty where it can} */
    default Optional<String> notYet(Document document) {
        return Optional.empty();
    }
}

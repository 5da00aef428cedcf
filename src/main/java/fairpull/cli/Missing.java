package fairpull.cli;

import fairpull.app.usecase.UsageException;
import java.util.ArrayList;
import java.util.List;

/** What a verb cannot do without: all that was not typed is asked for in one line, with a value that works. */
final class Missing {
    private final List<String> options = new ArrayList<>();
    private final List<String> examples = new ArrayList<>();

    /** Asks for an option that was not typed. */
    Missing unless(String typed, String option, String example) {
        if (typed == null) {
            options.add(option);
            examples.add(option + " " + example);
        }
        return this;
    }

    /** Refuses to go on if anything is missing. */
    void refuse() {
        if (!options.isEmpty()) {
            int last = options.size() - 1;
            throw new UsageException(last == 0 ? options.get(0) : String.join(", ", options.subList(0, last)) + " and " + options.get(last),
                    (last == 0 ? "is" : "are") + " missing; add "
                    + (last == 0 ? "it" : "them") + ", such as " + String.join(" ", examples));
        }
    }
}

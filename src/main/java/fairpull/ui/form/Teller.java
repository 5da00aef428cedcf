package fairpull.ui.form;

import fairpull.app.task.Job;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Says and asks things in place, so that no dialogue stands in the way. */
public interface Teller {
    /** Says something; empty words take away what was said. */
    void say(String words);

    /** Asks something; each answer is a key of the words and what follows from it, the first one the usual one. */
    void ask(String question, Map<String, Runnable> answers);

    /** {@return who speaks for a component: the nearest one around it} */
    static Teller around(Component place) {
        if (SwingUtilities.getAncestorOfClass(Teller.class, place) instanceof Teller teller) {
            return teller;
        }
        throw new IllegalArgumentException("nobody speaks for " + place.getName());
    }

    /** Does work on files beside the window's thread; {@code then} hears what it gave, and a fault is said in words. */
    default <R> void onDisk(Job.OnDisk<R> work, Consumer<R> then) {
        Job.start(Job.onDisk(work), SwingUtilities::invokeLater, share -> { },
                ended -> ended.tell(then, fault -> say(FaultWords.of(fault))));
    }

    /** Has a file written; where there is one of that name already, only if that is wanted. */
    default void replacing(Path target, Runnable writing) {
        onDisk(() -> Files.exists(target), there -> {
            if (!there) {
                writing.run();
                return;
            }
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put("file.keep", () -> { });
            answers.put("file.replace", writing);
            ask(Words.of("file.there", target), answers);
        });
    }
}

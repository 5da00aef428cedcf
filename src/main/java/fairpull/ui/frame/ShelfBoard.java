package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.ui.form.Teller;
import fairpull.ui.page.shelf.ShelfPane;
import java.awt.BorderLayout;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JPanel;

/** All of the window of tests in a folder but its frame: what is said above, the list beneath. */
public final class ShelfBoard extends JPanel implements Teller {
    private final Banner banner = new Banner();
    private final ShelfPane pane;

    /** A board; {@code opening} opens a test, {@code choosing} asks for a folder. */
    public ShelfBoard(Settings settings, Consumer<Path> opening, Consumer<Consumer<Path>> choosing) {
        super(new BorderLayout());
        pane = new ShelfPane(settings, opening, choosing);
        add(banner, BorderLayout.NORTH);
        add(pane, BorderLayout.CENTER);
        setTransferHandler(new Drops(pane::take));
    }

    /** {@return the list} */
    public ShelfPane pane() {
        return pane;
    }

    @Override
    public void say(String words) {
        banner.say(words);
    }

    @Override
    public void ask(String question, Map<String, Runnable> answers) {
        banner.ask(question, answers);
    }
}

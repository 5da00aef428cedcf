package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import net.miginfocom.swing.MigLayout;

/** Three steps through the window, each beside the page that it tells of. Whoever has seen or left it is not asked again. */
final class Tour extends Card {
    private static final String SETTING = "tour";
    private static final List<String> PAGES = List.of("page.question", "page.sequence", "page.limits");

    private final Settings settings;
    private final Consumer<String> going;
    private final Prose words = Prose.body("");
    private final JButton next;
    private int step;

    /** A tour that takes no room until it starts; {@code going} brings a page into view by its key. */
    Tour(Settings settings, Consumer<String> going) {
        super("", new MigLayout("insets 8 14 8 8, gap 8 6, fillx", "[grow, fill][pref!][pref!]"));
        this.settings = settings;
        this.going = going;
        setName("tour");
        words.setName("tour.words");
        next = Buttons.of("tour.next", () -> show(step + 1));
        add(words, "growx, wmin 0, aligny center");
        add(next);
        add(Buttons.of("tour.leave", this::leave));
        setVisible(false);
    }

    /** Starts it unless it was seen before. */
    void offer() {
        if (settings.find(SETTING).isEmpty()) {
            start();
        }
    }

    void start() {
        setVisible(true);
        show(0);
    }

    private void show(int number) {
        if (number == PAGES.size()) {
            leave();
            return;
        }
        step = number;
        going.accept(PAGES.get(step));
        words.setText(Words.of("tour.step", step + 1, PAGES.size(), Words.of("tour." + (step + 1))));
        next.setText(Words.of(step + 1 < PAGES.size() ? "tour.next" : "tour.end"));
        revalidate();
    }

    private void leave() {
        settings.set(SETTING, "seen");
        setVisible(false);
        revalidate();
    }
}

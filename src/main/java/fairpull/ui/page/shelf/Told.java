package fairpull.ui.page.shelf;

import fairpull.app.usecase.shelf.ListedTest;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Brings tests to the window's thread as they come, as many at a time as have come meanwhile. */
final class Told implements Consumer<ListedTest> {
    private final Consumer<List<ListedTest>> telling;
    private List<ListedTest> waiting = new ArrayList<>();

    Told(Consumer<List<ListedTest>> telling) {
        this.telling = telling;
    }

    @Override
    public synchronized void accept(ListedTest test) {
        if (waiting.isEmpty()) {
            SwingUtilities.invokeLater(() -> telling.accept(taken()));
        }
        waiting.add(test);
    }

    private synchronized List<ListedTest> taken() {
        List<ListedTest> taken = waiting;
        waiting = new ArrayList<>();
        return taken;
    }
}

package fairpull.ui.frame;

import fairpull.app.usecase.keeping.KeepTest;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;

/** The list of tests while it is open, and the frame around it. */
final class OpenShelf {
    private final Windows windows;
    private final ShelfBoard board;
    private final Shell shell;

    OpenShelf(Windows windows, Function<OpenShelf, Shell> framing) {
        this.windows = windows;
        board = new ShelfBoard(windows.settings(), this::open, this::choose);
        shell = framing.apply(this);
    }

    Windows windows() {
        return windows;
    }

    ShelfBoard board() {
        return board;
    }

    Shell shell() {
        return shell;
    }

    private void open(Path test) {
        board.onDisk(() -> KeepTest.open(test), windows::show);
    }

    private void choose(Consumer<Path> then) {
        shell.chooseFolder("shelf.choose").ifPresent(then);
    }

    /** Ends it. */
    void end() {
        board.pane().end();
        windows.closed(this);
        shell.dispose();
    }
}

package fairpull.ui;

import fairpull.app.document.Settings;
import fairpull.ui.frame.ShelfBoard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import javax.swing.AbstractButton;
import javax.swing.JTable;

/** The window of tests in a folder: without one, with a hundred invented tests, and their rig over time. */
final class ShelfGallery {
    private static final int TESTS = 100;

    private ShelfGallery() {
    }

    /** {@return the folder, made once} */
    private static synchronized Path shop(Path folder) throws IOException {
        Path shop = folder.resolve("shop");
        if (!Files.exists(shop)) {
            InventedTests.make(shop, TESTS);
            InventedTests.record(shop.resolve("rig"));
        }
        return shop;
    }

    /** Draws them through {@code keep}, which is told the name of each. */
    static void draw(Path folder, BiConsumer<String, ShelfBoard> keep, int scale) throws IOException {
        Path shop = shop(folder);
        ShelfBoard[] board = new ShelfBoard[1];
        step(board, () -> board[0] = OffScreen.onScreenOf(scale, new ShelfBoard(Settings.in(folder.resolve("none")), test -> { },
                then -> { })));
        keep.accept("shelf-empty", board[0]);
        step(board, () -> board[0].pane().look(shop));
        step(board, () -> table(board[0]).setRowSelectionInterval(2, 2));
        keep.accept("shelf", board[0]);
        step(board, () -> Hand.within(board[0]).filter(one -> "shelf.rigs".equals(one.getName())).map(AbstractButton.class::cast)
                .forEach(AbstractButton::doClick));
        keep.accept("shelf-rig", board[0]);
    }

    private static JTable table(ShelfBoard board) {
        return Hand.within(board).filter(JTable.class::isInstance).map(JTable.class::cast).findFirst().orElseThrow();
    }

    private static void step(ShelfBoard[] board, Runnable work) {
        Waiting.onWindowThread(work);
        for (int round = 0; round < 2; round++) {
            Waiting.forQuiet();
            Waiting.onWindowThread(() -> OffScreen.laidOut(board[0], 1280, 800));
        }
    }
}

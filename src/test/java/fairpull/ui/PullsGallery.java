package fairpull.ui;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.Page;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Point;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;

/** The page of pulls in its states, with the invented test that comes with the project: all there, one chosen, residuals, an import. */
final class PullsGallery {
    private PullsGallery() {
    }

    /** Draws them through {@code keep}, which is told the name of each. */
    static void draw(Mode mode, int width, int height, Consumer<String> keep, Consumer<TestPane> pane) throws Exception {
        Path home = Files.createTempDirectory("gallery");
        Document document = KeepTest.open(CopiedTest.of(Path.of("plans/electric-pump"), home.resolve("test")));
        TestPane[] shown = new TestPane[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.install(mode, 1);
            shown[0] = new TestPane(document, Settings.in(home.resolve("none")), Pages::of);
            OffScreen.laidOut(shown[0], width, height);
        });
        pane.accept(shown[0]);
        Page page = shown[0].pages().stream().filter(one -> one.key().equals("page.pulls")).findFirst().orElseThrow();
        step(shown[0], width, height, () -> shown[0].go(page));
        keep.accept("pulls");
        step(shown[0], width, height, () -> find(shown[0], "pulls.list", JTable.class).setRowSelectionInterval(4, 4));
        step(shown[0], width, height, () -> find(shown[0], "overlay.view", JComboBox.class).setSelectedItem("install"));
        scroll(shown[0], 330);
        keep.accept("pulls-residuals");
        Path export = Files.copy(Path.of("demo-data/electric-pump/B1-1.csv"), home.resolve("run 17.csv"));
        Path other = Files.writeString(home.resolve("A1-2.csv"), "Engine speed;Power\n2500;100,5\n3000;120,5\n3500;130,5\n");
        step(shown[0], width, height, () -> List.of(export, other).forEach(file -> shown[0].take(file, folder -> { })));
        scroll(shown[0], 0);
        step(shown[0], width, height, () -> { });
        keep.accept("pulls-import");
        step(shown[0], width, height, () -> find(shown[0], "import.paste", AbstractButton.class).doClick(0));
        keep.accept("pulls-paste");
    }

    private static void scroll(TestPane pane, int y) throws Exception {
        SwingUtilities.invokeAndWait(() -> Hand.within(pane).filter(JScrollPane.class::isInstance)
                .map(JScrollPane.class::cast).filter(scroll -> Hand.within(scroll)
                        .anyMatch(inner -> "pulls".equals(inner.getName()))).findFirst().orElseThrow()
                .getViewport().setViewPosition(new Point(0, y)));
    }

    private static <C extends Component> C find(TestPane pane, String name, Class<C> type) {
        return Hand.within(pane).filter(one -> name.equals(one.getName()) && type.isInstance(one)).map(type::cast).findFirst()
                .orElseThrow();
    }

    private static void step(TestPane pane, int width, int height, Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            work.run();
            OffScreen.laidOut(pane, width, height);
        });
        for (int round = 0; round < 3; round++) {
            Waiting.forQuiet();
            SwingUtilities.invokeAndWait(() -> OffScreen.laidOut(pane, width, height));
        }
        Waiting.forQuiet();
    }
}

package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.judging.KeepReport;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** The menus of the window of a test: everything that is not a page, each with its key. */
final class TestMenu {
    private final TestActions actions;
    private final Settings settings;
    private final MenuMaker maker;

    private TestMenu(TestActions actions, Settings settings) {
        this.actions = actions;
        this.settings = settings;
        maker = new MenuMaker(actions.pane()::flushed);
    }

    static JMenuBar of(TestActions actions, Settings settings) {
        TestMenu menu = new TestMenu(actions, settings);
        JMenuBar bar = new JMenuBar();
        bar.add(menu.test());
        bar.add(menu.edit());
        bar.add(menu.maker.view(settings));
        bar.add(menu.help());
        return bar;
    }

    private JMenu test() {
        JMenu menu = MenuMaker.menu("menu.test");
        menu.add(maker.item("menu.new", KeyEvent.VK_N, actions::newTest));
        menu.add(maker.item("menu.open", KeyEvent.VK_O, actions::open));
        menu.add(recent(menu));
        menu.addSeparator();
        menu.add(maker.item("menu.save", KeyEvent.VK_S, actions::save));
        JMenuItem saveNew = maker.plain("menu.saveNew", actions::saveNew);
        saveNew.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_S, MenuMaker.mask() | InputEvent.SHIFT_DOWN_MASK));
        menu.add(saveNew);
        menu.add(maker.item("menu.seal", KeyEvent.VK_E, actions::seal));
        menu.add(maker.item("menu.sheet", KeyEvent.VK_P, actions::sheet));
        menu.add(maker.item("menu.print", KeyEvent.VK_T, actions::print));
        JMenu finding = MenuMaker.menu("menu.finding");
        for (KeepReport.Kind kind : KeepReport.Kind.values()) {
            finding.add(maker.plain("report." + kind.name().toLowerCase(Locale.ROOT), () -> actions.reports().ask(kind)));
        }
        menu.add(finding);
        menu.addSeparator();
        menu.add(maker.item("menu.shelf", KeyEvent.VK_L, actions::shelf));
        menu.add(maker.plain("menu.audit", actions::audit));
        menu.add(maker.plain("menu.trace", actions::trace));
        menu.addSeparator();
        menu.add(maker.item("menu.close", KeyEvent.VK_W, actions::close));
        return menu;
    }

    private JMenu recent(JMenu around) {
        JMenu recent = MenuMaker.menu("menu.recent");
        recent.getPopupMenu();
        around.addMenuListener(new WhenShown(() -> {
            recent.removeAll();
            for (Path test : settings.recent()) {
                JMenuItem item = new JMenuItem(test.toString());
                item.addActionListener(event -> actions.open(test));
                recent.add(item);
            }
            recent.setEnabled(recent.getItemCount() > 0);
        }));
        return recent;
    }

    private JMenu edit() {
        Document document = actions.document();
        return maker.edit(document::undoLabel, document::redoLabel, document::listen, actions::undo, actions::redo);
    }

    private JMenu help() {
        JMenu menu = MenuMaker.menu("menu.help");
        JMenuItem words = maker.plain("menu.words", HelpView::open);
        words.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_F1, 0));
        menu.add(words);
        menu.add(maker.plain("menu.tour", () -> actions.pane().startTour()));
        menu.add(maker.plain("menu.example", actions::example));
        return menu;
    }
}

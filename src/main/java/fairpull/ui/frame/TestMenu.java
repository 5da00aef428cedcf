package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.theme.Words;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** The menus of a window: everything that is not a page, each with its key. */
final class TestMenu {
    private final TestActions actions;
    private final Settings settings;

    private TestMenu(TestActions actions, Settings settings) {
        this.actions = actions;
        this.settings = settings;
    }

    static JMenuBar of(TestActions actions, Settings settings) {
        TestMenu menu = new TestMenu(actions, settings);
        JMenuBar bar = new JMenuBar();
        bar.add(menu.test());
        bar.add(menu.edit());
        bar.add(menu.view());
        bar.add(menu.help());
        return bar;
    }

    private JMenu test() {
        JMenu menu = menu("menu.test");
        menu.add(item("menu.new", KeyEvent.VK_N, actions::newTest));
        menu.add(item("menu.open", KeyEvent.VK_O, actions::open));
        JMenu recent = menu("menu.recent");
        menu.add(recent);
        recent.getPopupMenu();
        menu.addMenuListener(new WhenShown(() -> {
            recent.removeAll();
            for (Path test : settings.recent()) {
                JMenuItem item = new JMenuItem(test.toString());
                item.addActionListener(event -> actions.open(test));
                recent.add(item);
            }
            recent.setEnabled(recent.getItemCount() > 0);
        }));
        menu.addSeparator();
        menu.add(item("menu.save", KeyEvent.VK_S, actions::save));
        menu.add(item("menu.seal", KeyEvent.VK_E, actions::seal));
        menu.add(item("menu.sheet", KeyEvent.VK_P, actions::sheet));
        menu.addSeparator();
        menu.add(plain("menu.trace", actions::trace));
        menu.addSeparator();
        menu.add(item("menu.close", KeyEvent.VK_W, actions::close));
        return menu;
    }

    private JMenu edit() {
        JMenu menu = menu("menu.edit");
        JMenuItem undo = item("menu.undo", KeyEvent.VK_Z, actions::undo);
        JMenuItem redo = item("menu.redo", KeyEvent.VK_Y, actions::redo);
        Document document = actions.window().document();
        Runnable relabel = () -> {
            undo.setText(Words.of("menu.undo") + document.undoLabel().map(label -> ": " + label).orElse(""));
            undo.setEnabled(document.undoLabel().isPresent());
            redo.setText(Words.of("menu.redo") + document.redoLabel().map(label -> ": " + label).orElse(""));
            redo.setEnabled(document.redoLabel().isPresent());
        };
        document.listen(relabel);
        relabel.run();
        menu.add(undo);
        menu.add(redo);
        return menu;
    }

    private JMenu view() {
        JMenu menu = menu("menu.view");
        ButtonGroup modes = new ButtonGroup();
        Appearance appearance = new Appearance(settings);
        for (Appearance.Theme theme : Appearance.Theme.values()) {
            menu.add(choice("menu.mode." + theme.name(), modes, appearance.theme() == theme, () -> appearance.choose(theme)));
        }
        menu.addSeparator();
        ButtonGroup units = new ButtonGroup();
        for (UnitSystem system : UnitSystem.values()) {
            menu.add(choice("menu.units." + system.name(), units, settings.units() == system, () -> settings.units(system)));
        }
        menu.addSeparator();
        menu.add(item("menu.larger", KeyEvent.VK_PLUS, appearance::larger));
        menu.add(item("menu.smaller", KeyEvent.VK_MINUS, appearance::smaller));
        return menu;
    }

    private JMenu help() {
        JMenu menu = menu("menu.help");
        JMenuItem words = item("menu.words", KeyEvent.VK_H, HelpView::open);
        words.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_F1, 0));
        menu.add(words);
        menu.add(plain("menu.tour", () -> actions.window().pane().startTour()));
        menu.add(plain("menu.example", actions::example));
        return menu;
    }

    private static JMenuItem plain(String key, Runnable work) {
        JMenuItem item = item(key, KeyEvent.VK_UNDEFINED, work);
        item.setAccelerator(null);
        return item;
    }

    private static JMenu menu(String key) {
        JMenu menu = new JMenu(Words.of(key));
        menu.setName(key);
        menu.setMnemonic(Words.mnemonic(key));
        return menu;
    }

    private static JMenuItem item(String key, int letter, Runnable work) {
        JMenuItem item = new JMenuItem(Words.of(key));
        item.setName(key);
        item.setMnemonic(Words.mnemonic(key));
        int mask = GraphicsEnvironment.isHeadless() ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        item.setAccelerator(KeyStroke.getKeyStroke(letter, mask));
        item.addActionListener(event -> work.run());
        return item;
    }

    private static JMenuItem choice(String key, ButtonGroup group, boolean chosen, Runnable work) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(Words.of(key), chosen);
        item.setName(key);
        group.add(item);
        item.addActionListener(event -> work.run());
        return item;
    }
}

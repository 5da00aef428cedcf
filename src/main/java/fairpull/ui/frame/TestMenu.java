package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.KeepReport;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.theme.Words;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
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
        JMenuItem saveNew = item("menu.saveNew", KeyEvent.VK_S, actions::saveNew);
        saveNew.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_S, mask() | InputEvent.SHIFT_DOWN_MASK));
        menu.add(saveNew);
        menu.add(item("menu.seal", KeyEvent.VK_E, actions::seal));
        menu.add(item("menu.sheet", KeyEvent.VK_P, actions::sheet));
        menu.add(item("menu.print", KeyEvent.VK_T, actions::print));
        JMenu finding = menu("menu.finding");
        for (KeepReport.Kind kind : KeepReport.Kind.values()) {
            finding.add(plain("report." + kind.name().toLowerCase(Locale.ROOT), () -> actions.reports().ask(kind)));
        }
        menu.add(finding);
        menu.addSeparator();
        menu.add(item("menu.shelf", KeyEvent.VK_L, actions::shelf));
        menu.add(plain("menu.trace", actions::trace));
        menu.addSeparator();
        menu.add(item("menu.close", KeyEvent.VK_W, actions::close));
        return menu;
    }

    private JMenu edit() {
        JMenu menu = menu("menu.edit");
        JMenuItem undo = item("menu.undo", KeyEvent.VK_Z, actions::undo);
        JMenuItem redo = item("menu.redo", KeyEvent.VK_Y, actions::redo);
        Document document = actions.document();
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
        Appearance appearance = new Appearance(settings);
        choices(menu, "menu.mode.", Appearance.Theme.values(), appearance::theme, appearance::choose);
        menu.addSeparator();
        choices(menu, "menu.units.", UnitSystem.values(), settings::units, settings::units);
        menu.addSeparator();
        JMenuItem larger = item("menu.larger", KeyEvent.VK_PLUS, appearance::larger);
        // where the plus has no key of its own it lies over the equals sign
        also(larger, KeyStroke.getKeyStroke(KeyEvent.VK_EQUALS, mask()), appearance::larger);
        also(larger, KeyStroke.getKeyStroke(KeyEvent.VK_EQUALS, mask() | InputEvent.SHIFT_DOWN_MASK), appearance::larger);
        also(larger, KeyStroke.getKeyStroke(KeyEvent.VK_ADD, mask()), appearance::larger);
        menu.add(larger);
        JMenuItem smaller = item("menu.smaller", KeyEvent.VK_MINUS, appearance::smaller);
        also(smaller, KeyStroke.getKeyStroke(KeyEvent.VK_SUBTRACT, mask()), appearance::smaller);
        menu.add(smaller);
        return menu;
    }

    /** A key besides the one that stands in the menu. */
    private static void also(JMenuItem item, KeyStroke key, Runnable work) {
        item.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, item.getName());
        item.getActionMap().put(item.getName(), new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    private JMenu help() {
        JMenu menu = menu("menu.help");
        JMenuItem words = item("menu.words", KeyEvent.VK_H, HelpView::open);
        words.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_F1, 0));
        menu.add(words);
        menu.add(plain("menu.tour", () -> actions.pane().startTour()));
        menu.add(plain("menu.example", actions::example));
        return menu;
    }

    private JMenuItem plain(String key, Runnable work) {
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

    private JMenuItem item(String key, int letter, Runnable work) {
        JMenuItem item = new JMenuItem(Words.of(key));
        item.setName(key);
        item.setMnemonic(Words.mnemonic(key));
        item.setAccelerator(KeyStroke.getKeyStroke(letter, mask()));
        item.addActionListener(event -> actions.pane().flushed(work));
        return item;
    }

    private static int mask() {
        return GraphicsEnvironment.isHeadless() ? InputEvent.CTRL_DOWN_MASK : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    /** One of a few, which other windows may change meanwhile: what holds is looked up whenever the menu is shown. */
    private static <T extends Enum<T>> void choices(JMenu menu, String key, T[] all, Supplier<T> now, Consumer<T> choose) {
        ButtonGroup group = new ButtonGroup();
        for (T one : all) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(Words.of(key + one.name()), now.get() == one);
            item.setName(key + one.name());
            item.setMnemonic(Words.mnemonic(key + one.name()));
            group.add(item);
            item.addActionListener(event -> choose.accept(one));
            menu.addMenuListener(new WhenShown(() -> item.setSelected(now.get() == one)));
            menu.add(item);
        }
    }
}

package fairpull.ui.frame;

import fairpull.app.document.Settings;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.theme.Words;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;

/** Makes the menus of a window: each line with its letter and key. What is still being typed is sent before a line does its work. */
final class MenuMaker {
    private final Consumer<Runnable> flushed;

    /** Menus whose lines work through {@code flushed}, which first sends what is being typed. */
    MenuMaker(Consumer<Runnable> flushed) {
        this.flushed = flushed;
    }

    static JMenu menu(String key) {
        JMenu menu = new JMenu(Words.of(key));
        menu.setName(key);
        menu.setMnemonic(Words.mnemonic(key));
        return menu;
    }

    /** {@return a line with the menu key and a letter} */
    JMenuItem item(String key, int letter, Runnable work) {
        JMenuItem item = plain(key, work);
        item.setAccelerator(KeyStroke.getKeyStroke(letter, mask()));
        return item;
    }

    /** {@return a line without a key of its own} */
    JMenuItem plain(String key, Runnable work) {
        JMenuItem item = new JMenuItem(Words.of(key));
        item.setName(key);
        item.setMnemonic(Words.mnemonic(key));
        item.addActionListener(event -> flushed.accept(work));
        return item;
    }

    static int mask() {
        return GraphicsEnvironment.isHeadless() ? InputEvent.CTRL_DOWN_MASK : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    /** {@return the menu Edit; its lines say what they would do, anew whenever {@code listen} tells} */
    JMenu edit(Supplier<Optional<String>> undoLabel, Supplier<Optional<String>> redoLabel, Consumer<Runnable> listen, Runnable undoing,
            Runnable redoing) {
        JMenu menu = menu("menu.edit");
        JMenuItem undo = item("menu.undo", KeyEvent.VK_Z, undoing);
        JMenuItem redo = item("menu.redo", KeyEvent.VK_Y, redoing);
        Runnable relabel = () -> {
            relabel(undo, undoLabel.get());
            relabel(redo, redoLabel.get());
        };
        listen.accept(relabel);
        relabel.run();
        menu.add(undo);
        menu.add(redo);
        return menu;
    }

    private static void relabel(JMenuItem item, Optional<String> label) {
        item.setText(Words.of(item.getName()) + label.map(words -> ": " + words).orElse(""));
        item.setEnabled(label.isPresent());
    }

    /** {@return the menu View: theme, units, size of type} */
    JMenu view(Settings settings) {
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

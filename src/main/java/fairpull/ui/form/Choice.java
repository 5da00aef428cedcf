package fairpull.ui.form;

import fairpull.ui.theme.Words;
import java.awt.Component;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;

/**
 * One of a few.
 *
 * @param <T> what is chosen
 */
public final class Choice<T> {
    private final String key;
    private final JLabel label = new JLabel();
    private final JComboBox<T> box;
    private boolean showing;

    /**
     * A choice.
     *
     * @param key of its label in the words
     * @param all what can be chosen
     * @param words how each is called
     * @param sent gets what was chosen
     */
    public Choice(String key, List<T> all, Function<T, String> words, Consumer<T> sent) {
        this.key = key;
        box = new JComboBox<>();
        all.forEach(box::addItem);
        box.setRenderer(new DefaultListCellRenderer() {
            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
                String text = value == null ? "" : words.apply((T) value);
                return super.getListCellRendererComponent(list, text, index, selected, focused);
            }
        });
        label.setText(Words.of(key));
        label.setLabelFor(box);
        if (Words.mnemonic(key) != 0) {
            label.setDisplayedMnemonic(Words.mnemonic(key));
        }
        box.setName(key);
        box.getAccessibleContext().setAccessibleName(Words.of(key));
        Words.find(key + ".tip").ifPresent(tip -> {
            box.setToolTipText(Words.tip(tip));
            label.setToolTipText(Words.tip(tip));
        });
        box.addActionListener(event -> {
            if (!showing && box.getSelectedIndex() >= 0) {
                sent.accept(box.getItemAt(box.getSelectedIndex()));
            }
        });
    }

    /** Offers other values in place of all that were offered. */
    public void offer(List<T> values) {
        showing = true;
        box.removeAllItems();
        values.forEach(box::addItem);
        showing = false;
    }

    /** Belongs to a row of many, counted from 0: it says which; returns itself. */
    public Choice<T> inRow(int row) {
        box.setName(key + "." + row);
        box.getAccessibleContext().setAccessibleName(Words.of("form.row", Words.of(key), row + 1));
        return this;
    }

    /** Shows what the document holds. */
    public void show(T value) {
        showing = true;
        box.setSelectedItem(value);
        showing = false;
    }

    /** Whether it can be edited. */
    public void enable(boolean enabled) {
        box.setEnabled(enabled);
        label.setEnabled(enabled);
    }

    /** Puts label and box into a panel of two columns. */
    public void addTo(JPanel panel) {
        addTo(panel, "wmin 80");
    }

    /** Puts them into a panel of two columns, the box as wide as asked. */
    public void addTo(JPanel panel, String constraints) {
        panel.add(label, "aligny baseline");
        panel.add(box, constraints);
    }

    /** {@return the box itself, for focus and tests} */
    public JComboBox<T> box() {
        return box;
    }
}

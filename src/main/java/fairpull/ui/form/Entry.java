package fairpull.ui.form;

import fairpull.app.usecase.UsageException;
import fairpull.domain.unit.UnitSystem;
import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Collection;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * A line in which something is typed. What is understood is sent on while it is typed; what is not stays where it is, with the reason
 * beneath it in words. Nothing is ever thrown away and no dialogue is opened.
 *
 * @param <T> what the text means
 */
public final class Entry<T> implements Input {
    private static final int PAUSE_MS = 300;

    private final JLabel label = new JLabel();
    private final JTextField field = new JTextField();
    private final Line complaint = new Line(" ", Role.B, Look.Type.SMALL);
    private final Reader<T> reader;
    private final Consumer<T> sent;
    private final Runnable settled;
    private final Timer pause;
    private final String key;
    private String hint = "";
    private final String tip;
    private String shown = "";
    private String wrong = "";
    private boolean asWritten;
    private boolean asTyped;
    private String own;
    private T meant;
    private boolean sending;
    private boolean aside;
    private boolean showing;

    /**
     * Understands a text.
     *
     * @param <T> what it means
     */
    public interface Reader<T> {
        /**
         * Reads a text.
         *
         * @throws UsageException where it is not understood
         * @throws IllegalArgumentException likewise, in words for people
         */
        T read(String text);
    }

    /**
     * An entry.
     *
     * @param key of its label in the words; {@code key.tip} teaches the term
     * @param reader understands what is typed
     * @param sent gets what was understood; may refuse it with words for people
     * @param settled hears that typing is over for now
     */
    public Entry(String key, Reader<T> reader, Consumer<T> sent, Runnable settled) {
        this.key = key;
        this.reader = reader;
        this.sent = sent;
        this.settled = settled;
        pause = new Timer(PAUSE_MS, event -> send());
        pause.setRepeats(false);
        label.setText(Words.of(key));
        label.setLabelFor(field);
        if (Words.mnemonic(key) != 0) {
            label.setDisplayedMnemonic(Words.mnemonic(key));
        }
        field.setName(key);
        found();
        field.getAccessibleContext().setAccessibleName(Words.of(key));
        tip = Words.find(key + ".tip").orElse("");
        if (!tip.isEmpty()) {
            field.setToolTipText(Words.tip(tip));
            label.setToolTipText(Words.tip(tip));
        }
        hint("");
        complaint.setName(key + ".complaint");
        complaint.setVisible(false);
        listen();
    }

    private void listen() {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                typed();
            }
        });
        field.addActionListener(event -> finish());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                finish();
            }
        });
    }

    @Override
    public void flush() {
        if (pause.isRunning()) {
            finish();
        }
    }

    /** Says beneath the fields of some names what is lacking there, and no longer beneath others; no field is wrong for that. */
    public static void lacking(Container within, Collection<String> names, String words) {
        in(within).filter(entry -> entry.wrong.isEmpty()).forEach(entry -> {
            entry.complain(names.contains(entry.field.getName()) ? words : "");
            entry.wrong = "";
        });
    }

    private static Stream<Entry<?>> in(Component component) {
        if (component instanceof JTextField text && text.getClientProperty(Input.class) instanceof Entry<?> entry) {
            return Stream.of(entry);
        }
        return component instanceof Container container ? Stream.of(container.getComponents()).flatMap(Entry::in) : Stream.empty();
    }

    private void typed() {
        if (!showing) {
            pause.restart();
        }
    }

    private void finish() {
        if (pause.isRunning()) {
            send();
        }
        settled.run();
        if (!complaint.isVisible() && !isStillMeant()) {
            SwingUtilities.invokeLater(() -> overwrite(shown));
        }
    }

    private void send() {
        pause.stop();
        try {
            T understood = reader.read(typedText());
            sending = true;
            sent.accept(understood);
            own = field.getText();
            meant = understood;
            complain("");
        } catch (UsageException misunderstood) {
            complain(misunderstood.problem());
        } catch (IllegalArgumentException impossible) {
            complain(impossible.getMessage());
        } finally {
            sending = false;
        }
    }

    private String typedText() {
        return asWritten ? field.getText() : LocalNumbers.typed(field.getText());
    }

    private void complain(String words) {
        wrong = words;
        complaint.setText(words.isEmpty() ? " " : Words.lines(words));
        complaint.setVisible(!words.isEmpty());
        field.putClientProperty("JComponent.outline", words.isEmpty() ? null : "warning");
        field.getAccessibleContext().setAccessibleDescription(words.isEmpty() ? tip : words);
    }

    /** Shows what the document holds; what is being typed is not disturbed unless the document says something else. */
    public void show(String plain) {
        String text = asWritten ? plain : LocalNumbers.shown(plain);
        boolean typing = field.isFocusOwner() || pause.isRunning() || complaint.isVisible();
        if (text.equals(shown) && (typing || isStillMeant())) {
            return;
        }
        shown = text;
        if (sending && asTyped) {
            return;
        }
        if (!typing || !meansTheSame(plain)) {
            overwrite(text);
        }
    }

    /** Keeps what was typed, in its own unit, for as long as it means what the document holds; returns itself. */
    public Entry<T> asTyped() {
        asTyped = true;
        return this;
    }

    private boolean isStillMeant() {
        if (!asTyped || own == null || !own.equals(field.getText())) {
            return false;
        }
        try {
            return reader.read(typedText()).equals(meant);
        } catch (UsageException | IllegalArgumentException meanwhileMisunderstood) {
            return false;
        }
    }

    private boolean meansTheSame(String text) {
        try {
            return reader.read(typedText()).equals(reader.read(text));
        } catch (UsageException | IllegalArgumentException misunderstood) {
            return false;
        }
    }

    private void overwrite(String text) {
        if (!field.getText().equals(text)) {
            showing = true;
            field.setText(text);
            field.setCaretPosition(0);
            showing = false;
        }
        complain("");
    }

    /** What is typed is no part of the plan: a plan is kept even while it is wrong. Returns itself. */
    public Entry<T> aside() {
        aside = true;
        return this;
    }

    /** Belongs to a row of many, counted from 0: it and what is told of it say which; returns itself. */
    public Entry<T> inRow(int row) {
        label.setText(Words.of("form.row", Words.of(key), row + 1));
        field.setName(key + "." + row);
        field.getAccessibleContext().setAccessibleName(label.getText());
        complaint.setName(key + "." + row + ".complaint");
        return this;
    }

    /** Takes what is typed for words, in which a comma is a comma and a point a point; returns itself. */
    public Entry<T> asWritten() {
        asWritten = true;
        return this;
    }

    /** Shows, while it is empty, how amounts are typed in these units. */
    public void hintIn(UnitSystem system) {
        hint("." + system.name());
    }

    /** Shows other words while it is empty. */
    public void hintAs(String words) {
        hint = LocalNumbers.shown(words);
        showHint();
    }

    private void hint(String variant) {
        Words.find(key + ".hint" + variant).ifPresent(words -> hint = LocalNumbers.shown(words));
        showHint();
    }

    /** A hint in a field that cannot be edited would pass for what the document holds. */
    private void showHint() {
        field.putClientProperty("JTextField.placeholderText", field.isEnabled() ? hint : "");
        field.repaint();
    }

    /** Whether it can be edited. Where it cannot, it shows what the document holds and nothing else. */
    public void enable(boolean enabled) {
        if (!enabled) {
            pause.stop();
            if (!isStillMeant()) {
                overwrite(shown);
            }
        }
        field.setEnabled(enabled);
        showHint();
        label.setEnabled(enabled);
    }

    @Override
    public String name() {
        return label.getText();
    }

    @Override
    public String wrong() {
        return wrong;
    }

    @Override
    public boolean isAside() {
        return aside;
    }

    @Override
    public JTextField field() {
        return field;
    }

    /** Puts label, field and complaint into a panel of two columns. */
    public void addTo(JPanel panel) {
        addTo(panel, "growx, wmin 80");
    }

    /** Puts them into a panel of two columns, the field as wide as asked. */
    public void addTo(JPanel panel, String constraints) {
        panel.add(label, "aligny baseline");
        panel.add(field, constraints);
        panel.add(complaint, "skip 1, growx, wmin 0, hidemode 3");
    }

    /** {@return the label, for who lays it out in another way} */
    public JComponent label() {
        return label;
    }

    /** {@return what says beneath the field what is wrong} */
    public JComponent complaint() {
        return complaint;
    }
}

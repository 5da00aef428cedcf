package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/**
 * Running text that wraps, has figures as the locale writes them,
 * can be selected and copied, and takes no focus on the way through a form.
 */
public final class Prose extends JTextArea {
    private final Role role;
    private final Look.Type type;
    private boolean verbatim;
    /** Sizes, until anything changes: a layout asks for each several times, and each time all lines would be broken anew. */
    private transient Dimension preferred;
    private transient Dimension least;
    private transient Dimension most;

    /** Text of a role and size. */
    public Prose(String text, Role role, Look.Type type) {
        super(text);
        this.role = role;
        this.type = type;
        setEditable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setFocusable(false);
        setBorder(null);
        setMargin(new Insets(0, 0, 0, 0));
        // words that change must not scroll the page to themselves
        DefaultCaret still = new DefaultCaret();
        still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        setCaret(still);
        dress();
    }

    /** Body text in ink. */
    public static Prose body(String text) {
        return new Prose(text, Role.INK, Look.Type.BODY);
    }

    /** Small text of lesser weight. */
    public static Prose small(String text) {
        return new Prose(text, Role.SOFT, Look.Type.SMALL);
    }

    /** Text that is shown as it is, such as words with the names of files in them. */
    public static Prose verbatim() {
        return body("").asWritten();
    }

    /** Shows what it is given as it is, from now on; returns itself. */
    public Prose asWritten() {
        verbatim = true;
        return this;
    }

    @Override
    public void setText(String text) {
        super.setText(verbatim ? text : LocalNumbers.shown(text));
    }

    @Override
    public void invalidate() {
        preferred = null;
        least = null;
        most = null;
        super.invalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        preferred = preferred == null ? super.getPreferredSize() : preferred;
        return new Dimension(preferred);
    }

    @Override
    public Dimension getMinimumSize() {
        least = least == null ? super.getMinimumSize() : least;
        return new Dimension(least);
    }

    @Override
    public Dimension getMaximumSize() {
        most = most == null ? super.getMaximumSize() : most;
        return new Dimension(most);
    }

    private void dress() {
        setFont(Look.font(type));
        setForeground(Look.colour(role));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(null);
        if (role != null) {
            dress();
        }
    }
}

package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import javax.swing.JLabel;

/** A line of text in the colour of a role, which follows when the look changes; figures are written as the locale has them. */
public final class Line extends JLabel {
    private Role role;
    private final Look.Type type;

    /** A line of a role and size. */
    public Line(String text, Role role, Look.Type type) {
        super(LocalNumbers.shown(text));
        this.role = role;
        this.type = type;
        dress();
    }

    /** Says something else in its place. */
    public void say(String text) {
        setText(LocalNumbers.shown(text));
    }

    /** Says something else in another role. */
    public void say(String text, Role other) {
        role = other;
        say(text);
        dress();
    }

    private void dress() {
        setFont(Look.font(type));
        setForeground(Look.colour(role));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (role != null) {
            dress();
        }
    }
}

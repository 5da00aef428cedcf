package fairpull.ui.form;

import com.formdev.flatlaf.ui.FlatUIUtils;
import fairpull.report.chart.Role;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.text.Bidi;
import java.util.stream.Collectors;
import javax.swing.JLabel;

/**
 * A line of text in the colour of a role, which follows when the look changes; figures are written as the locale has them. A text with
 * breaks in it, such as a complaint, takes so many lines.
 */
public final class Line extends JLabel {
    private static final char LEFT_TO_RIGHT = '\u200e';

    private Role role;
    private final Look.Type type;

    /** A line of a role and size. */
    public Line(String text, Role role, Look.Type type) {
        super(shown(text));
        this.role = role;
        this.type = type;
        dress();
    }

    /** Says something else in its place. */
    public void say(String text) {
        setText(shown(text));
    }

    /** A sentence runs from left to right even where it begins with a word of a script that does not, as in fields and running text. */
    private static String shown(String text) {
        String local = LocalNumbers.shown(text);
        return Bidi.requiresBidi(local.toCharArray(), 0, local.length())
                ? local.lines().map(line -> LEFT_TO_RIGHT + line).collect(Collectors.joining("\n")) : local;
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

    private boolean hasBreaks() {
        return getText() != null && getText().indexOf('\n') >= 0;
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet() || !hasBreaks()) {
            return super.getPreferredSize();
        }
        FontMetrics metrics = getFontMetrics(getFont());
        int widest = getText().lines().mapToInt(metrics::stringWidth).max().orElse(0);
        return new Dimension(widest, metrics.getHeight() * (int) getText().lines().count());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (!hasBreaks()) {
            super.paintComponent(graphics);
            return;
        }
        FontMetrics metrics = getFontMetrics(getFont());
        graphics.setFont(getFont());
        graphics.setColor(getForeground());
        int baseline = metrics.getAscent();
        for (String line : getText().lines().toList()) {
            FlatUIUtils.drawString(this, graphics, line, 0, baseline);
            baseline += metrics.getHeight();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (role != null) {
            dress();
        }
    }
}

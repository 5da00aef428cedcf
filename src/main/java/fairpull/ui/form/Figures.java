package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.Font;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Figures by name: the name on the left, the figure on the right; a figure too long for the line beside its name takes the next one. */
public final class Figures extends JPanel {
    private final int width;

    /** Figures in lines that are so many pixels wide at the usual size of type. */
    public Figures(int width) {
        super(new MigLayout("insets 0, gap 4 4, fillx, wrap 2", "[pref!]8[grow, right]"));
        this.width = width;
        setOpaque(false);
    }

    /** Adds a figure below the others. */
    public void add(String name, String figure) {
        JLabel label = new JLabel(name);
        label.setForeground(Look.colour(Role.SOFT));
        JLabel value = new JLabel(figure);
        Font strong = Look.font(Look.Type.STRONG);
        value.setFont(strong);
        label.setLabelFor(value);
        boolean beside = label.getPreferredSize().width + value.getPreferredSize().width + 8 <= width;
        add(label, beside ? "" : "spanx");
        add(value, beside ? "wmin 0" : "spanx, right, wmin 0");
    }
}

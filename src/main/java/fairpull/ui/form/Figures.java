package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.BorderLayout;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Figures by name: the name on the left, the figure on the right; a figure too long for the line beside its name takes the next one. */
public final class Figures extends JPanel {
    private final int width;

    /** Figures in lines that are so many pixels wide at the usual size of type. */
    public Figures(int width) {
        super(new MigLayout("insets 0, gap 4 4, fillx, wrap 1", "[grow, fill]"));
        this.width = width;
        setOpaque(false);
    }

    /** Adds a figure below the others. */
    public void figure(String name, String figure) {
        Line label = new Line(name, Role.SOFT, Look.Type.BODY);
        Line value = new Line(figure, Role.INK, Look.Type.STRONG);
        label.setLabelFor(value);
        JPanel line = new JPanel(new BorderLayout(8, 4));
        line.setOpaque(false);
        boolean beside = label.getPreferredSize().width + value.getPreferredSize().width + 8 <= width * Look.scale();
        line.add(label, beside ? BorderLayout.WEST : BorderLayout.NORTH);
        line.add(value, BorderLayout.EAST);
        add(line, "wmin 0");
    }
}

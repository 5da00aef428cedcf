package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Figures by name: the name on the left, the figure on the right; a figure too long for the line beside its name takes the next one. */
public final class Figures extends JPanel {
    private final int width;
    private final List<Row> rows = new ArrayList<>();

    /** Figures in lines that are so many pixels wide at the usual size of type. */
    public Figures(int width) {
        super(new MigLayout("insets 0, gap 4 4, fillx, wrap 1", "[grow, fill]"));
        this.width = width;
        setOpaque(false);
    }

    /** Adds a figure below the others. */
    public void figure(String name, String figure) {
        figure(rows.size(), name, figure);
    }

    /** Says the figure of a line, counted from 0; the line behind the last one is added. */
    public void figure(int place, String name, String figure) {
        if (place == rows.size()) {
            Row row = new Row();
            rows.add(row);
            add(row, "wmin 0");
        }
        rows.get(place).say(name, figure, width * Look.scale());
    }

    /** Keeps so many lines and takes the others away. */
    public void keep(int lines) {
        while (rows.size() > lines) {
            remove(rows.remove(rows.size() - 1));
        }
    }

    /** One line. */
    private static final class Row extends JPanel {
        private final Line name = new Line("", Role.SOFT, Look.Type.BODY);
        private final Line figure = new Line("", Role.INK, Look.Type.STRONG);

        Row() {
            super(new BorderLayout(8, 4));
            setOpaque(false);
            name.setLabelFor(figure);
            add(figure, BorderLayout.EAST);
        }

        void say(String called, String value, double width) {
            name.say(called);
            figure.say(value);
            boolean beside = name.getPreferredSize().width + figure.getPreferredSize().width + 8 <= width;
            String side = beside ? BorderLayout.WEST : BorderLayout.NORTH;
            if (((BorderLayout) getLayout()).getLayoutComponent(side) != name) {
                add(name, side);
            }
        }
    }
}

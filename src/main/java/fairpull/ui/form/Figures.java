package fairpull.ui.form;

import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Figures by name: the name on the left, the figure on the right; a figure too long for the line beside its name takes the next one. */
public final class Figures extends JPanel {
    private static final int GAP = 8;

    private final int width;
    private final List<Row> rows = new ArrayList<>();

    /** Figures in lines that are about so many pixels wide at the usual size of type, until they are laid out. */
    public Figures(int width) {
        super(new MigLayout("insets 0, gap 2 4, fillx, wrap 1", "[grow, fill]"));
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
            Row row = new Row(width);
            rows.add(row);
            add(row, "wmin 0");
        }
        rows.get(place).say(name, figure);
    }

    /** Keeps so many lines and takes the others away. */
    public void keep(int lines) {
        while (rows.size() > lines) {
            remove(rows.remove(rows.size() - 1));
        }
    }

    /** One line, as high as its width asks for. */
    private static final class Row extends JPanel {
        private final int usualWidth;
        private final Line name = new Line("", Role.SOFT, Look.Type.BODY);
        private final Line figure = new Line("", Role.INK, Look.Type.STRONG);

        Row(int usualWidth) {
            super(null);
            this.usualWidth = usualWidth;
            setOpaque(false);
            name.setLabelFor(figure);
            add(name);
            add(figure);
        }

        void say(String called, String value) {
            name.say(called);
            figure.say(value);
            revalidate();
        }

        private boolean isBeside() {
            double room = getWidth() > 0 ? getWidth() : usualWidth * Look.scale();
            return name.getPreferredSize().width + figure.getPreferredSize().width + GAP <= room;
        }

        @Override
        public Dimension getPreferredSize() {
            Dimension left = name.getPreferredSize();
            Dimension right = figure.getPreferredSize();
            return isBeside() ? new Dimension(left.width + GAP + right.width, Math.max(left.height, right.height))
                    : new Dimension(Math.max(left.width, right.width), left.height + 2 + right.height);
        }

        @Override
        public void setBounds(int x, int y, int wide, int high) {
            boolean resized = wide != getWidth();
            super.setBounds(x, y, wide, high);
            if (resized) {
                revalidate();
            }
        }

        @Override
        public void doLayout() {
            int below = isBeside() ? 0 : name.getPreferredSize().height + 2;
            Dimension right = figure.getPreferredSize();
            name.setBounds(0, 0, Math.min(getWidth(), name.getPreferredSize().width), name.getPreferredSize().height);
            int shown = Math.min(getWidth(), right.width);
            figure.setBounds(getWidth() - shown, below, shown, right.height);
        }
    }
}

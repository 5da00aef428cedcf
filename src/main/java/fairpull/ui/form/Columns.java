package fairpull.ui.form;

import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Children side by side while each has the width that it needs at least; where not, as many a row as have it. */
public final class Columns extends JPanel {
    private final int gap;
    private final List<String> columns;
    private int across;

    /**
     * No children yet.
     *
     * @param gap between children, in pixels
     * @param columns how each column takes what is left, as MigLayout says it
     */
    public Columns(int gap, String... columns) {
        this.gap = gap;
        this.columns = List.of(columns);
        setOpaque(false);
        setLayout(new MigLayout());
        arrange(columns.length);
    }

    private void arrange(int number) {
        across = number;
        MigLayout layout = (MigLayout) getLayout();
        layout.setLayoutConstraints("insets 0, novisualpadding, gap " + gap + " " + gap + ", fillx, hidemode 3, wrap " + number);
        layout.setColumnConstraints(number == 1 ? "[grow, fill]" : String.join("", columns.subList(0, number)));
    }

    /** Adds a child, as high as its row. */
    @Override
    public Component add(Component child) {
        add(child, "aligny top, growy");
        return child;
    }

    private int fitting(int width) {
        List<Integer> needed = new ArrayList<>();
        for (Component child : getComponents()) {
            if (child.isVisible()) {
                needed.add(child.getMinimumSize().width);
            }
        }
        int number = columns.size();
        while (number > 1 && needs(needed, number) > width) {
            number--;
        }
        return number;
    }

    /** The widest of the columns, row for row, with the gaps between them. */
    private int needs(List<Integer> widths, int number) {
        int all = gap * (number - 1);
        for (int column = 0; column < number; column++) {
            int widest = 0;
            for (int place = column; place < widths.size(); place += number) {
                widest = Math.max(widest, widths.get(place));
            }
            all += widest;
        }
        return all;
    }

    @Override
    public void doLayout() {
        int number = fitting(getWidth());
        if (number != across) {
            arrange(number);
            revalidate();
        }
        super.doLayout();
    }

    /** As wide as one child needs: narrower than that, something is cut whatever is done. */
    @Override
    public Dimension getMinimumSize() {
        int widest = 0;
        for (Component child : getComponents()) {
            widest = Math.max(widest, child.getMinimumSize().width);
        }
        return new Dimension(widest, super.getMinimumSize().height);
    }
}

package fairpull.ui.page.audit;

import fairpull.ui.theme.Look;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Fields side by side under their heads; where that is too narrow for what is typed, the first one stands over the others. */
class FoldingRow extends JPanel {
    /** The width at the usual size of type beneath which a row is folded. */
    private static final int ROOM = 560;
    private static final String CELL = "growx, wmin 0";

    private final List<String> columns;
    private final String behind;
    private boolean folded;

    /**
     * An empty row.
     *
     * @param columns of the layout
     * @param behind the column of what stands behind the fields
     */
    FoldingRow(List<String> columns, String behind) {
        super(new MigLayout());
        this.columns = columns;
        this.behind = behind;
        setOpaque(false);
        arrange();
    }

    private void arrange() {
        MigLayout layout = (MigLayout) getLayout();
        int across = folded ? columns.size() - 1 : columns.size();
        layout.setLayoutConstraints("insets 0, gap 8 2, fillx, hidemode 3, wrap " + (across + 1));
        layout.setColumnConstraints(String.join("", columns.subList(folded ? 1 : 0, columns.size())) + behind);
        if (getComponentCount() > 0) {
            layout.setComponentConstraints(getComponent(0), folded ? CELL + ", spanx" : CELL);
        }
    }

    @Override
    public void doLayout() {
        boolean narrow = getWidth() < ROOM * Look.scale();
        if (narrow != folded) {
            folded = narrow;
            arrange();
            revalidate();
        }
        super.doLayout();
    }
}

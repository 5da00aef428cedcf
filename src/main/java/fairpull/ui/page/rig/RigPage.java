package fairpull.ui.page.rig;

import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What the car is measured on, and how much its figures scatter. */
public final class RigPage implements Page {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final RigCard rig;
    private final ScatterCard scatter;
    private final PilotCard pilot;

    /** The page on a desk. */
    public RigPage(Desk desk) {
        view.setOpaque(false);
        rig = new RigCard(desk);
        scatter = new ScatterCard(desk);
        pilot = new PilotCard(desk);
        view.add(scatter);
        view.add(rig);
        view.add(pilot);
    }

    @Override
    public String key() {
        return "page.rig";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void show() {
        rig.refresh();
        scatter.refresh();
        pilot.refresh();
    }
}

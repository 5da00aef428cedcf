package fairpull.ui.page.limits;

import fairpull.ui.form.Columns;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What must hold before a pull starts: gates, air, heat, checklist. */
public final class LimitsPage implements Page {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final GatesCard gates;
    private final AirCard air;
    private final HeatCard heat;
    private final ChecklistCard checklist;

    /** The page on a desk. */
    public LimitsPage(Desk desk) {
        view.setOpaque(false);
        gates = new GatesCard(desk);
        air = new AirCard(desk);
        heat = new HeatCard(desk);
        checklist = new ChecklistCard(desk);
        Columns now = new Columns(16, "[50%, fill]", "[grow, fill]");
        now.add(gates);
        now.add(air);
        view.add(now);
        view.add(heat);
        view.add(checklist);
    }

    @Override
    public String key() {
        return "page.limits";
    }

    @Override
    public JComponent view() {
        return view;
    }

    /** A table is taken for a logged cool-down. */
    @Override
    public boolean take(Path file) {
        heat.take(file);
        return true;
    }

    @Override
    public void show() {
        gates.refresh();
        air.refresh();
        heat.refresh();
        checklist.refresh();
    }
}

package fairpull.ui.page.sequence;

import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The order of installs, their pulls and the clock; beside them the days and the numbers of pulls that could be had instead. */
public final class SequencePage implements Page {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 2, hidemode 3", "[58%!, fill][grow, fill]"));
    private final FitCard fit;
    private final OrderCard order;
    private final InstallCard install;
    private final DaysCard days;
    private final PullsCard pulls;
    private final LooksCard looks;
    private final CostCard cost;

    /** The page on a desk. */
    public SequencePage(Desk desk) {
        view.setOpaque(false);
        fit = new FitCard(desk);
        order = new OrderCard(desk);
        install = new InstallCard(desk);
        days = new DaysCard(desk);
        pulls = new PullsCard(desk);
        looks = new LooksCard(desk);
        cost = new CostCard(desk);
        view.add(fit, "spanx");
        view.add(order, "spanx");
        view.add(days, "aligny top, growy");
        view.add(pulls, "aligny top, growy");
        view.add(install, "spanx");
        view.add(looks, "aligny top, growy");
        view.add(cost, "aligny top, growy");
    }

    @Override
    public String key() {
        return "page.sequence";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void show() {
        fit.refresh();
        order.refresh();
        install.refresh();
        days.refresh();
        pulls.refresh();
        looks.refresh();
        cost.refresh();
    }
}

package fairpull.ui.page.sequence;

import fairpull.ui.form.Card;
import fairpull.ui.form.Columns;
import fairpull.ui.page.Desk;
import fairpull.ui.page.Page;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The order of installs, their pulls and the clock; beside them the days and the numbers of pulls that could be had instead. */
public final class SequencePage implements Page {
    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1, hidemode 3", "[grow, fill]"));
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
        view.add(fit);
        view.add(order);
        view.add(beside(days, pulls));
        view.add(install);
        view.add(beside(looks, cost));
    }

    private static Columns beside(Card wide, Card narrow) {
        Columns columns = new Columns(16, "[58%, fill]", "[grow, fill]");
        columns.add(wide);
        columns.add(narrow);
        return columns;
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

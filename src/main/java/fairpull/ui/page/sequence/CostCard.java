package fairpull.ui.page.sequence;

import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.search.Costs;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;

/** What an hour, a pull, a swap and a set-up cost in this shop: a setting, no part of any plan. */
final class CostCard extends Card {
    private final Desk desk;
    private final Entry<Double> hour;
    private final Entry<Double> pull;
    private final Entry<Double> swap;
    private final Entry<Double> setUp;
    private final Entry<Double> most;

    CostCard(Desk desk) {
        super(Words.of("cost.head"));
        this.desk = desk;
        hour = entry("hour");
        pull = entry("pull");
        swap = entry("swap");
        setUp = entry("setUp");
        most = entry("most");
        add(Prose.small(Words.of("cost.sub")), "spanx, growx, wmin 0");
        hour.addTo(this);
        pull.addTo(this);
        swap.addTo(this);
        setUp.addTo(this);
        most.addTo(this);
        desk.settings().listen(this::refresh);
    }

    private Entry<Double> entry(String name) {
        return new Entry<>("cost." + name, PlanTyping::money, money -> desk.settings().cost(name, money), () -> { }).aside();
    }

    void refresh() {
        Costs costs = desk.settings().costs();
        hour.show(PlanTyping.money(costs.perHour()));
        pull.show(PlanTyping.money(costs.perPull()));
        swap.show(PlanTyping.money(costs.perSwap()));
        setUp.show(PlanTyping.money(costs.setUp()));
        most.show(PlanTyping.money(desk.settings().number("cost.most", 0)));
    }
}

package fairpull.ui.page.finding;

import fairpull.app.usecase.judging.FindingView.Section;
import fairpull.report.chart.Chart;
import fairpull.ui.form.Columns;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * What was found, as it is read: alarms; the verdict and whether it stands, with the change over engine speed beside them where there is
 * room; what can be done with it; all that it rests on.
 */
final class FoundCards {
    private final List<SectionCard> all;
    private final List<SectionCard> alarms;
    private final List<SectionCard> verdict;
    private final List<SectionCard> beside;
    private final List<SectionCard> ground;

    private FoundCards(List<SectionCard> all) {
        this.all = all;
        alarms = of(all, kind -> kind.equals("alarm"));
        boolean curves = all.stream().anyMatch(card -> card.kind().equals("change"));
        List<String> left = curves ? List.of("verdict", "standing") : List.of("verdict");
        List<String> right = curves ? List.of("change", "claims") : List.of("standing", "claims");
        verdict = of(all, left::contains);
        beside = of(all, right::contains);
        ground = all.stream().filter(card -> !alarms.contains(card) && !verdict.contains(card) && !beside.contains(card)).toList();
    }

    static FoundCards of(List<Section> sections) {
        return new FoundCards(sections.stream().map(SectionCard::new).toList());
    }

    private static List<SectionCard> of(List<SectionCard> cards, Predicate<String> kind) {
        return cards.stream().filter(card -> kind.test(card.kind())).toList();
    }

    /** Shows or hides the figures and methods behind every card. */
    void open(boolean open) {
        all.forEach(card -> card.open(open));
    }

    /** Puts the cards into a view, and the bar where the verdict has been read. */
    void addTo(JComponent view, JComponent bar) {
        alarms.forEach(card -> view.add(card, "growx, wmin 0"));
        Columns found = new Columns(16, "[grow, fill, sg]", "[grow, fill, sg]");
        found.add(new Stack(verdict));
        found.add(new Stack(beside));
        view.add(found, "growx, wmin 0");
        view.add(bar, "growx, wmin 0");
        ground.forEach(card -> view.add(card, "growx, wmin 0"));
    }

    /** Cards below each other, in no less width than their charts ask for. */
    private static final class Stack extends JPanel {
        private static final int AROUND = 42;

        Stack(List<SectionCard> cards) {
            super(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
            setOpaque(false);
            cards.forEach(card -> add(card, "growx, wmin 0"));
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension((int) Math.ceil((Chart.NARROWEST + AROUND) * Look.scale()), 0);
        }
    }
}

package fairpull.ui.page.audit;

import fairpull.app.usecase.AuditTyping;
import fairpull.app.usecase.PlanTyping;
import fairpull.domain.air.Barometer;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.plan.Correction;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** How the figures came about, as far as it was disclosed. */
public final class ProcedurePage implements AuditPage {
    private static final Function<Sameness, String> SAME = word -> Words.of("audit.same." + word.name());
    private static final Function<Boolean, String> YES = word -> Words.of(word ? "audit.yes" : "audit.no");

    private final JPanel view = new JPanel(new MigLayout("insets 0, gap 16 16, fillx, wrap 1", "[grow, fill]"));
    private final List<ProcedureCard> cards;

    /** The page on a desk. */
    public ProcedurePage(AuditDesk desk) {
        view.setOpaque(false);
        cards = List.of(pulls(desk), same(desk), order(desk), air(desk), curves(desk), new ScatterItems(desk).card());
        cards.forEach(card -> view.add(card, "growx, wmin 0"));
    }

    private static ProcedureCard pulls(AuditDesk desk) {
        return new ProcedureCard(desk, "audit.pulls.head", true)
                .choices("audit.quoted", List.of(Quote.Kind.values()), kind -> Words.of("audit.quoted." + kind.name()), Procedure::quoted,
                        Procedure::withQuoted)
                .entries("audit.pulls", AuditTyping::pulls, String::valueOf, Procedure::pulls, Procedure::withPulls);
    }

    private static ProcedureCard same(AuditDesk desk) {
        List<Sameness> words = List.of(Sameness.values());
        return new ProcedureCard(desk, "audit.same.head", false)
                .choice("audit.rig", words, SAME, Procedure::rig, Procedure::withRig)
                .choice("audit.strapDown", words, SAME, Procedure::strapDown, Procedure::withStrapDown)
                .choice("audit.day", words, SAME, Procedure::day, Procedure::withDay)
                .choice("audit.allElse", words, SAME, Procedure::otherChanges, Procedure::withOtherChanges)
                .entry("audit.alsoChanged", AuditTyping::words, Function.identity(), Procedure::alsoChanged, Procedure::withAlsoChanged)
                .asWritten();
    }

    private static ProcedureCard order(AuditDesk desk) {
        List<Boolean> words = List.of(true, false);
        return new ProcedureCard(desk, "audit.order.head", false)
                .entry("audit.order", AuditTyping::order, RunOrder::letters, Procedure::order, Procedure::withOrder)
                .choice("audit.returned", words, YES, Procedure::returnedSaid, Procedure::withReturnedSaid)
                .choice("audit.namedBefore", words, YES, Procedure::namedBefore, Procedure::withNamedBefore);
    }

    private static ProcedureCard air(AuditDesk desk) {
        return new ProcedureCard(desk, "audit.air.head", true)
                .choices("audit.correction", List.of(Correction.values()), PlanTyping::correction, Procedure::corrections,
                        Procedure::withCorrections)
                .choices("audit.barometer", List.of(Barometer.Kind.values()), kind -> Words.of("audit.barometer." + kind.name()),
                        Procedure::barometers, Procedure::withBarometers)
                .entry("audit.elevation", AuditTyping::elevation, Printed::words, Procedure::elevation, Procedure::withElevation);
    }

    private static ProcedureCard curves(AuditDesk desk) {
        return new ProcedureCard(desk, "audit.smoothing.head", true)
                .entries("audit.smoothing", AuditTyping::words, Function.identity(), Procedure::smoothing, Procedure::withSmoothing)
                .asWritten()
                .entry("audit.sweep", AuditTyping::sweep, AuditTyping::text, Procedure::sweep, Procedure::withSweep);
    }

    @Override
    public String key() {
        return "page.procedure";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void show() {
        cards.forEach(ProcedureCard::refresh);
    }
}

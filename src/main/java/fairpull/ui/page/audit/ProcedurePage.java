package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.app.usecase.planning.PlanTyping;
import fairpull.domain.air.Barometer;
import fairpull.domain.audit.Printed;
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
                .choices("audit.quoted", List.of(Quote.Kind.values()), kind -> Words.of("audit.quoted." + kind.name()),
                        said -> said.quoting().kinds(), (said, kinds) -> said.with(said.quoting().withKinds(kinds)))
                .entries("audit.pulls", AuditTyping::pulls, String::valueOf, said -> said.quoting().pulls(),
                        (said, pulls) -> said.with(said.quoting().withPulls(pulls)));
    }

    private static ProcedureCard same(AuditDesk desk) {
        List<Sameness> words = List.of(Sameness.values());
        return new ProcedureCard(desk, "audit.same.head", false)
                .choice("audit.rig", words, SAME, said -> said.keeping().rig(), (said, rig) -> said.with(said.keeping().withRig(rig)))
                .choice("audit.strapDown", words, SAME, said -> said.keeping().strapDown(),
                        (said, straps) -> said.with(said.keeping().withStrapDown(straps)))
                .choice("audit.day", words, SAME, said -> said.keeping().day(), (said, day) -> said.with(said.keeping().withDay(day)))
                .choice("audit.allElse", words, SAME, said -> said.keeping().otherChanges(),
                        (said, others) -> said.with(said.keeping().withOtherChanges(others)))
                .entry("audit.alsoChanged", AuditTyping::words, Function.identity(), said -> said.keeping().alsoChanged(),
                        (said, others) -> said.with(said.keeping().withAlsoChanged(others)))
                .asWritten();
    }

    private static ProcedureCard order(AuditDesk desk) {
        List<Boolean> words = List.of(true, false);
        return new ProcedureCard(desk, "audit.order.head", false)
                .entry("audit.order", AuditTyping::order, RunOrder::letters, said -> said.returning().order(),
                        (said, order) -> said.with(said.returning().withOrder(order)))
                .choice("audit.returned", words, YES, said -> said.returning().said(),
                        (said, returned) -> said.with(said.returning().withSaid(returned)))
                .choice("audit.namedBefore", words, YES, said -> said.quoting().namedBefore(),
                        (said, named) -> said.with(said.quoting().withNamedBefore(named)));
    }

    private static ProcedureCard air(AuditDesk desk) {
        return new ProcedureCard(desk, "audit.air.head", true)
                .choices("audit.correction", List.of(Correction.values()), PlanTyping::correction, said -> said.correcting().corrections(),
                        (said, corrections) -> said.with(said.correcting().withCorrections(corrections)))
                .choices("audit.barometer", List.of(Barometer.Kind.values()), kind -> Words.of("audit.barometer." + kind.name()),
                        said -> said.correcting().barometers(),
                        (said, barometers) -> said.with(said.correcting().withBarometers(barometers)))
                .entry("audit.elevation", AuditTyping::elevation, Printed::words, said -> said.correcting().elevation(),
                        (said, height) -> said.with(said.correcting().withElevation(height)));
    }

    private static ProcedureCard curves(AuditDesk desk) {
        return new ProcedureCard(desk, "audit.smoothing.head", true)
                .entries("audit.smoothing", AuditTyping::words, Function.identity(), said -> said.sweeping().smoothing(),
                        (said, smoothing) -> said.with(said.sweeping().withSmoothing(smoothing)))
                .asWritten()
                .entry("audit.sweep", AuditTyping::sweep, AuditTyping::text, said -> said.sweeping().speeds(),
                        (said, speeds) -> said.with(said.sweeping().withSpeeds(speeds)));
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

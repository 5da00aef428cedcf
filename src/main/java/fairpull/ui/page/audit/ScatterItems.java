package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.audit.StatedScatter.Layer;
import fairpull.ui.theme.Words;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The items of scatter that was stated, layer by layer. */
final class ScatterItems {
    private final AuditDesk desk;

    ScatterItems(AuditDesk desk) {
        this.desk = desk;
    }

    ProcedureCard card() {
        return new ProcedureCard(desk, "audit.scatter.head", false)
                .entry("audit.scatter.pull", AuditTyping::layer, AuditTyping::text, procedure -> procedure.scatter().map(
                        StatedScatter::pull), ScatterItems::withPull)
                .entry("audit.scatter.refit", AuditTyping::layer, AuditTyping::text, procedure -> procedure.scatter().flatMap(
                        StatedScatter::refit), (procedure, refit) -> beside(procedure, refit, stated -> new StatedScatter(stated.pull(),
                                refit, stated.day())))
                .entry("audit.scatter.day", AuditTyping::layer, AuditTyping::text, procedure -> procedure.scatter().flatMap(
                        StatedScatter::day), (procedure, day) -> beside(procedure, day, stated -> new StatedScatter(stated.pull(),
                                stated.refit(), day)));
    }

    /** Without that of pulls nothing is known of the others. */
    private static Procedure withPull(Procedure procedure, Optional<Layer> pull) {
        return procedure.withScatter(pull.map(layer -> new StatedScatter(layer, procedure.scatter().flatMap(StatedScatter::refit),
                procedure.scatter().flatMap(StatedScatter::day))));
    }

    private static Procedure beside(Procedure procedure, Optional<Layer> layer,
            UnaryOperator<StatedScatter> change) {
        if (procedure.scatter().isEmpty() && layer.isPresent()) {
            throw new IllegalArgumentException(Words.of("audit.scatter.pullFirst"));
        }
        return procedure.withScatter(procedure.scatter().map(change));
    }
}

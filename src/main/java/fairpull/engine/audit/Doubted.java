package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Quantity;
import java.util.List;

/**
 * Whether a publication contradicts itself about a figure: power and torque that do not come to each other, a text that says something
 * else than the plot or the values behind it, curves of its quantity that are copies of each other or whose axes are not what they say.
 */
final class Doubted {
    private Doubted() {
    }

    static boolean by(List<AuditCheck> checks, Publication publication, Publication.Figure figure) {
        return checks.stream().anyMatch(check -> check.found().stream().anyMatch(found -> switch (check.code()) {
            case TEXT_AGAINST_PLOT, FIGURES_IDENTITY, VALUES_AGAINST_FIGURES -> found.names().contains(figure.name());
            case CURVES_IDENTITY, CURVES_MEET -> isOf(figure, Quantity.POWER) || isOf(figure, Quantity.TORQUE);
            case CURVE_STRETCH_COPIED, CURVE_IS_MULTIPLE -> publication.curves().stream()
                    .anyMatch(curves -> curves.name().equals(found.about()) && isOf(figure, curves.unit().quantity()));
            default -> false;
        }));
    }

    private static boolean isOf(Publication.Figure figure, Quantity quantity) {
        return figure.before().unit().quantity() == quantity;
    }
}

package fairpull.engine.audit;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Units;
import java.util.List;

/**
 * The pressure at the rig behind one correction, one reduced to sea level behind the other: the gain or loss that alone makes of an
 * unchanged car at the elevation of the rig ({@link BarometerMix}).
 */
final class Barometers implements Question {
    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        Correcting said = publication.procedure().correcting();
        boolean corrected = publication.figures().stream().anyMatch(Publication.Figure::isOfEngine) || !curves.isEmpty();
        if (!said.barometers().isKnown() || !said.restsOnBarometers() || !corrected) {
            return AuditCheck.notApplicable(Code.BAROMETERS);
        }
        if (said.barometers().isSame()) {
            return AuditCheck.of(Code.BAROMETERS, List.of());
        }
        double elevation = said.elevation().map(height -> height.si()).orElse(Double.NaN);
        double raised = Double.isNaN(elevation) ? Double.NaN
                : BarometerMix.apparentGain(Assumptions.correction(publication.procedure()), elevation);
        boolean gains = said.barometers().after().filter(Barometer.Kind.STATION::equals).isPresent();
        return AuditCheck.of(Code.BAROMETERS, List.of(Found.of("", AuditCheck.Side.BOTH, Units.METRE)
                .with(FoundFigure.APPARENT_GAIN, gains ? raised : 1 / (1 + raised) - 1).with(FoundFigure.ELEVATION, elevation)));
    }
}

package fairpull.report.chart;

import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import java.util.ArrayList;
import java.util.List;

/** The points of a difference curve without the gaps where no speed could be judged. */
final class Stretches {
    private Stretches() {
    }

    /** {@return the points in runs of neighbouring speeds} */
    static List<List<CurvePoint>> of(CurveFinding curve) {
        double widest = 1.5 * curve.curves().grid().stepRadPerS();
        List<List<CurvePoint>> stretches = new ArrayList<>();
        CurvePoint before = null;
        for (CurvePoint point : curve.points()) {
            if (before == null || point.speedRadPerS() - before.speedRadPerS() > widest) {
                stretches.add(new ArrayList<>());
            }
            stretches.get(stretches.size() - 1).add(point);
            before = point;
        }
        return stretches;
    }
}

package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck;
import fairpull.domain.audit.AuditCheck.Code;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Found;
import fairpull.domain.audit.FoundFigure;
import fairpull.domain.audit.Publication;
import fairpull.domain.curve.SpeedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gain confined to the start of the sweep, as another throttle, tip-in or load at the start makes: the mean relative gain over the first
 * three tenths of the speeds that both curves cover is 1 % or more and beyond what reading allows, and over the rest less than a quarter of
 * it. Common practice, no source.
 */
final class GainAtStartOnly implements Question {
    private static final double START = 0.3;
    private static final double LEAST = 0.01;
    private static final double REST = 0.25;
    private static final int SPEEDS = 60;
    private static final int FEWEST_POINTS = 8;

    @Override
    public AuditCheck put(Publication publication, List<CurvePair> curves) {
        List<Found> found = new ArrayList<>();
        boolean looked = false;
        for (CurvePair pair : curves) {
            Optional<SpeedRange> common = SweptSpan.common(pair);
            if (common.isPresent() && pair.before().size() >= FEWEST_POINTS && pair.after().size() >= FEWEST_POINTS) {
                looked = true;
                look(pair, common.get(), found);
            }
        }
        return AuditCheck.of(Code.GAIN_AT_START_ONLY, looked, found);
    }

    private static void look(CurvePair pair, SpeedRange common, List<Found> found) {
        CurveReading before = new CurveReading(pair.before());
        CurveReading after = new CurveReading(pair.after());
        double width = common.highRadPerS() - common.lowRadPerS();
        double[] gains = new double[2];
        double[] allowances = new double[2];
        int[] speeds = new int[2];
        for (int k = 0; k < SPEEDS; k++) {
            double share = (k + 0.5) / SPEEDS;
            CurveReading.Value one = before.at(common.lowRadPerS() + share * width);
            CurveReading.Value other = after.at(common.lowRadPerS() + share * width);
            if (one.value() > 0) {
                int part = share < START ? 0 : 1;
                gains[part] += other.value() / one.value() - 1;
                allowances[part] += (one.allowance() + other.allowance()) / one.value();
                speeds[part]++;
            }
        }
        double start = gains[0] / speeds[0];
        double rest = gains[1] / speeds[1];
        if (start >= LEAST && start > allowances[0] / speeds[0] && rest < REST * start) {
            found.add(Found.of(pair.published().name(), AuditCheck.Side.BOTH, pair.before().speedUnit())
                    .with(FoundFigure.GAIN_AT_START, start).with(FoundFigure.GAIN_AFTER, rest)
                    .with(FoundFigure.UNTIL, common.lowRadPerS() + START * width));
        }
    }
}

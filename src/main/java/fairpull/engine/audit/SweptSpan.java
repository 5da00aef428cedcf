package fairpull.engine.audit;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.Procedure;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Optional;

/**
 * The engine speeds over which a figure may have been picked: those that both of a pair of curves cover, the longest of several; else the
 * sweep that was disclosed; else the length that is assumed ({@link PickedSpeed#SWEEP_RPM}).
 *
 * @param range the speeds, where they are known
 */
record SweptSpan(Optional<SpeedRange> range) {
    static SweptSpan of(Procedure procedure, List<CurvePair> curves) {
        return new SweptSpan(curves.stream().flatMap(pair -> common(pair).stream())
                .reduce((one, other) -> width(one) >= width(other) ? one : other).or(procedure.sweeping()::speeds));
    }

    /** {@return the speeds that both curves cover} */
    static Optional<SpeedRange> common(CurvePair pair) {
        double low = Math.max(pair.before().range().lowRadPerS(), pair.after().range().lowRadPerS());
        double high = Math.min(pair.before().range().highRadPerS(), pair.after().range().highRadPerS());
        return low < high ? Optional.of(new SpeedRange(low, high)) : Optional.empty();
    }

    private static double width(SpeedRange range) {
        return range.highRadPerS() - range.lowRadPerS();
    }

    /** {@return what the largest difference along the sweep passes by chance, as {@link PickedSpeed} has it} */
    double criticalValue() {
        double rpm = range.map(known -> Units.RPM.fromSi(width(known))).orElse(PickedSpeed.SWEEP_RPM);
        return PickedSpeed.criticalValue(rpm, PickedSpeed.CORRELATION_LENGTH_RPM);
    }
}

package fairpull.domain.finding;

import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedRange;
import fairpull.domain.unit.Unit;
import java.util.List;
import java.util.Optional;

/**
 * The difference curve B − A over engine speed with its simultaneous band.
 *
 * @param unit the unit of the values, which also says the quantity
 * @param bandwidthRadPerS half the width of the window of the local linear fit
 * @param declared whether grid and bandwidth stand in the sealed plan; otherwise they were chosen after the day
 * @param level the level of band and intervals, as 0.95
 * @param criticalValue what the standard error is multiplied by for the band: a quantile of the largest |t| over all speeds; a speed
 *     whose own interval reaches further keeps that reach
 * @param degreesOfFreedom median over the speeds, with which the band is reckoned
 * @param draws how many directions were drawn for the critical value
 * @param recordUsed whether refit scatter rests on a rig record, and then on which figure
 * @param points the speeds that can be judged, rising
 * @param gains where the band lies beyond zero on the better side
 * @param losses where the band lies beyond zero on the worse side
 * @param shareShown how much of the compared speeds the ranges of gain take, 0 … 1
 * @param figures peak, mean and area by the same model
 * @param transientGain the range of a gain that lies near the start of the sweep only, as a quicker throttle opening would give it
 * @param curves the curves it was made of, for charts and for redoing it
 */
public record CurveFinding(Unit unit, double bandwidthRadPerS, boolean declared, double level, double criticalValue,
        double degreesOfFreedom, int draws, RecordUse recordUsed, List<CurvePoint> points, List<SpeedRange> gains, List<SpeedRange> losses,
        double shareShown, List<CurveFigure> figures, Optional<SpeedRange> transientGain, CurveTable curves) {
    /** On what the refit scatter of each speed rests. */
    public enum RecordUse {
        /** The data of the day alone. */
        OWN_DATA,
        /** The record's relative figure for the band, the same at every speed. */
        BAND_FIGURE,
        /** The record's relative figure for each speed. */
        EACH_SPEED
    }

    public CurveFinding {
        points = List.copyOf(points);
        gains = List.copyOf(gains);
        losses = List.copyOf(losses);
        figures = List.copyOf(figures);
    }

    /** {@return the same finding of the same curves under other names} */
    public CurveFinding of(CurveTable others) {
        return new CurveFinding(unit, bandwidthRadPerS, declared, level, criticalValue, degreesOfFreedom, draws, recordUsed, points, gains,
                losses, shareShown, figures, transientGain, others);
    }
}

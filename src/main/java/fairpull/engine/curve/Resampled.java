package fairpull.engine.curve;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A quantity of one pull over engine speed, and how it is brought onto a grid.
 *
 * <p>The curve is that of the {@link Sweep}, values at equal speeds averaged; on the grid it is fitted by {@link LocalLinear}. Nothing is
 * extrapolated: a speed of the grid that the sweep does not reach is NaN.
 */
public final class Resampled {
    private final SpeedCurve curve;

    private Resampled(SpeedCurve curve) {
        this.curve = curve;
    }

    /** {@return the curve of a quantity in SI; empty where the pull has no sweep or neither the quantity nor what it is computed from} */
    public static Optional<Resampled> of(Channels channels, Quantity quantity) {
        boolean held = channels.find(Quantity.ENGINE_SPEED).isPresent() && SpeedCurve.canHold(channels, quantity);
        return held ? Sweep.of(channels).flatMap(sweep -> SpeedCurve.of(channels, quantity, sweep)).map(Resampled::new) : Optional.empty();
    }

    /** {@return the lowest speed of the sweep with a value} */
    public double lowestRadPerS() {
        return curve.lowestRadPerS();
    }

    /** {@return the highest speed of the sweep with a value} */
    public double highestRadPerS() {
        return curve.highestRadPerS();
    }

    /** {@return the largest value as recorded} */
    public double peak() {
        return curve.peak();
    }

    /** {@return the values at the speeds of a grid} */
    public Samples on(SpeedGrid grid, double bandwidthRadPerS) {
        LocalLinear fits = curve.fits(bandwidthRadPerS);
        return Samples.of(IntStream.range(0, grid.size()).mapToDouble(place -> fits.at(grid.at(place))).toArray());
    }

    /** {@return at how many of the covered speeds of a grid neighbours are joined by a line, too few values lying within the bandwidth} */
    public int interpolated(SpeedGrid grid, double bandwidthRadPerS) {
        LocalLinear fits = curve.fits(bandwidthRadPerS);
        return (int) IntStream.range(0, grid.size()).mapToDouble(grid::at)
                .filter(speed -> curve.covers(speed) && fits.isInterpolated(speed)).count();
    }
}

package fairpull.engine.check;

import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Power against torque × engine speed, row by row over the sweep: r = P ÷ (T·ω), which is 1 (definition of power, all in SI).
 *
 * <p>Only rows with a fifth of the largest power or more count: below, rounding and bearings say more than the engine. Rounding of the
 * three columns is allowed for: half of the last digit of each, relative to its value.
 *
 * @param ratio median of r
 * @param spread robust standard deviation of r ÷ its median
 * @param rounding median of what rounding alone may do to r
 * @param offsetW median of P − T·ω
 * @param offsetSpreadW robust standard deviation of P − T·ω
 * @param worst the largest |r − 1| less what rounding may do
 * @param worstRadPerS where that is
 */
record PowerIdentity(double ratio, double spread, double rounding, double offsetW, double offsetSpreadW, double worst,
        double worstRadPerS) {
    /** A median further from 1 is no rounding; a quarter of the smallest mix-up of units, PS for hp, is 0.35 %. Common practice. */
    static final double RATIO_LIMIT = 0.0035;
    /** Single rows may differ further where one column is smoothed a little more; common practice, no source. */
    static final double ROW_LIMIT = 0.02;
    private static final double SHARE_OF_PEAK = 0.2;
    private static final int FEWEST = 5;

    /** {@return the identity of a pull; empty without all three channels in at least five rows} */
    static Optional<PowerIdentity> of(Traced pull) {
        Map<Quantity, Samples> channels = pull.channels().all();
        if (!channels.keySet().containsAll(Set.of(Quantity.ENGINE_SPEED, Quantity.POWER, Quantity.TORQUE))) {
            return Optional.empty();
        }
        Samples speed = channels.get(Quantity.ENGINE_SPEED);
        Samples power = channels.get(Quantity.POWER);
        Samples torque = channels.get(Quantity.TORQUE);
        double least = SHARE_OF_PEAK * power.stream().filter(Double::isFinite).max().orElse(0);
        int[] rows = Arrays.stream(pull.ofSweep(0, Double.POSITIVE_INFINITY))
                .filter(row -> power.at(row) > 0 && power.at(row) >= least && torque.at(row) > 0 && speed.at(row) > 0).toArray();
        if (rows.length < FEWEST) {
            return Optional.empty();
        }
        double[] ratios = new double[rows.length];
        double[] offsets = new double[rows.length];
        double[] rounding = new double[rows.length];
        double halfPower = pull.lastDigit(Quantity.POWER) / 2;
        double halfTorque = pull.lastDigit(Quantity.TORQUE) / 2;
        double halfSpeed = pull.lastDigit(Quantity.ENGINE_SPEED) / 2;
        double worst = 0;
        double worstAt = speed.at(rows[0]);
        for (int i = 0; i < rows.length; i++) {
            int row = rows[i];
            double product = torque.at(row) * speed.at(row);
            ratios[i] = power.at(row) / product;
            offsets[i] = power.at(row) - product;
            rounding[i] = halfPower / power.at(row) + halfTorque / torque.at(row) + halfSpeed / speed.at(row);
            double beyond = Math.abs(ratios[i] - 1) - rounding[i];
            if (beyond > worst) {
                worst = beyond;
                worstAt = speed.at(row);
            }
        }
        double ratio = Rows.median(ratios);
        double offset = Rows.median(offsets);
        return Optional.of(new PowerIdentity(ratio, Rows.robustDeviation(ratios, ratio) / ratio, Rows.median(rounding), offset,
                Rows.robustDeviation(offsets, offset), worst, worstAt));
    }

    boolean holds() {
        return Math.abs(ratio - 1) <= RATIO_LIMIT + rounding && worst <= ROW_LIMIT;
    }

    /** {@return whether one factor explains all rows} */
    boolean isOneRatio() {
        return !isNearOne() && variesLessThan(0);
    }

    boolean isNearOne() {
        return Math.abs(ratio - 1) <= RATIO_LIMIT + rounding;
    }

    /** {@return whether the ratio varies by less than its limit and rounding allow, or a share if that is more} */
    boolean variesLessThan(double share) {
        return spread <= Math.max(share, RATIO_LIMIT + rounding);
    }

    /** {@return whether one amount of power explains all rows, better than a factor does} */
    boolean isOneOffset() {
        return !isOneRatio() && Math.abs(offsetW) > 0 && offsetSpreadW < 0.1 * Math.abs(offsetW);
    }
}

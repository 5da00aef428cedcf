package fairpull.engine.stats;

/**
 * How much of the error rate may be used up by a share of the information.
 *
 * @see "Lan and DeMets (1983), Biometrika 70, 659–663"
 */
public enum ErrorSpending {
    /** 2 − 2·Φ(z(1 − α/2)/√t): next to nothing early, so that the last look hardly differs from a single one. */
    OBRIEN_FLEMING {
        @Override
        double ofShare(double tail, double fraction) {
            return 2 * Normal.upperTail(Normal.upperQuantile(tail / 2) / Math.sqrt(fraction));
        }
    },
    /** α·ln(1 + (e − 1)·t): much the same at every look. */
    POCOCK {
        @Override
        double ofShare(double tail, double fraction) {
            return tail * Math.log1p((Math.E - 1) * fraction);
        }
    };

    abstract double ofShare(double tail, double fraction);

    /**
     * The error of one tail that may be spent by a share of the information.
     *
     * @param tail error of one tail over all looks, in (0, 0.5)
     * @param fraction share of the information, in (0, 1]
     * @return 0 … {@code tail}
     */
    public double spent(double tail, double fraction) {
        return fraction == 1 ? tail : ofShare(tail, fraction);
    }
}

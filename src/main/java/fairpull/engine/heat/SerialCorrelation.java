package fairpull.engine.heat;

/**
 * How much neighbouring residuals resemble each other, and what that costs: readings of which each carries part of the one before are
 * worth n·(1 − r)/(1 + r) independent ones.
 *
 * @param firstLag Σeᵢeᵢ₊₁/Σeᵢ², from −1 to 1
 * @param readings how many there are
 * @see "Bayley and Hammersley (1946), The effective number of independent observations in an autocorrelated time series, Suppl. J. R.
 *     Statist. Soc. 8, 184–197 (from memory)"
 */
record SerialCorrelation(double firstLag, int readings) {
    /** Beyond this the formula asks for more than a log can tell. */
    private static final double HIGHEST = 0.98;

    static SerialCorrelation of(double[] residuals) {
        double own = 0;
        double next = 0;
        for (int i = 0; i < residuals.length; i++) {
            own += residuals[i] * residuals[i];
            next += i == 0 ? 0 : residuals[i - 1] * residuals[i];
        }
        return new SerialCorrelation(own == 0 ? 0 : next / own, residuals.length);
    }

    /** {@return whether it is more than chance: above 2/√n} */
    boolean isSeen() {
        return firstLag > 2 / Math.sqrt(readings);
    }

    /** {@return independent readings per reading: (1 − r)/(1 + r), and 1 where the correlation is not seen} */
    double worth() {
        double r = Math.min(HIGHEST, firstLag);
        return isSeen() ? (1 - r) / (1 + r) : 1;
    }
}

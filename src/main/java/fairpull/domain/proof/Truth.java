package fairpull.domain.proof;

/**
 * What is true in simulated campaigns, in the unit of the measure.
 *
 * @param pullScatter standard deviation of pulls within an install
 * @param refitScatter standard deviation that refitting adds; 0 is allowed
 * @param drawn whether the scatters are drawn anew for every campaign from what the records leave open
 * @param gain the gain in the campaigns that have one, above 0
 * @param driftPerHour linear drift within each session
 * @param outlierShare chance of each pull to be an outlier, 0 to below 1
 * @param outlierSize how far an outlier is off, up or down alike
 * @param autocorrelation of the scatter of neighbouring pulls of a session, above −1, below 1
 */
public record Truth(double pullScatter, double refitScatter, boolean drawn, double gain, double driftPerHour, double outlierShare,
        double outlierSize, double autocorrelation) {
    public Truth {
        require(pullScatter > 0 && Double.isFinite(pullScatter), "the true pull scatter must be above 0", pullScatter);
        require(refitScatter >= 0 && Double.isFinite(refitScatter), "the true refit scatter must be 0 or more", refitScatter);
        require(gain > 0 && Double.isFinite(gain), "the true gain must be above 0", gain);
        require(Double.isFinite(driftPerHour), "the true drift must be a number", driftPerHour);
        require(outlierShare >= 0 && outlierShare < 1, "the share of outliers must lie between 0 and 1", outlierShare);
        require(outlierSize >= 0 && Double.isFinite(outlierSize), "the size of outliers must be 0 or more", outlierSize);
        require(autocorrelation > -1 && autocorrelation < 1, "the autocorrelation must lie between -1 and 1", autocorrelation);
    }

    /** {@return independent normal scatter of fixed size, no drift, no outliers} */
    public static Truth plain(double pullScatter, double refitScatter, double gain) {
        return new Truth(pullScatter, refitScatter, false, gain, 0, 0, 0, 0);
    }

    private static void require(boolean sound, String rule, double was) {
        if (!sound) {
            throw new IllegalArgumentException(rule + ", was " + was);
        }
    }
}

package fairpull.domain.finding;

import fairpull.domain.plan.Part;
import java.util.List;

/** The answers of the single checks that stand beside a verdict. */
public final class Checks {
    private Checks() {
    }

    /**
     * Two one-sided tests that the change lies within ± the margin.
     *
     * @param margin the worthwhile gain
     * @param pValue the larger of the two
     */
    public record Equivalence(double margin, double pValue) {
    }

    /**
     * The scatter that was found.
     *
     * @param pull standard deviation of pulls within an install
     * @param refitVariance variance that refitting adds
     */
    public record ScatterFound(double pull, double refitVariance) {
    }

    /**
     * Does the last A agree with the first A?
     *
     * @param difference last A − first A, of raw install means
     * @param pullOnly the interval that pull scatter alone allows
     * @param withRefit the interval that adds refit scatter; the same as {@code pullOnly} without a record
     * @param byRecord whether a record was there to decide
     */
    public record ReturnCheck(double difference, Interval pullOnly, Interval withRefit, boolean byRecord) {
        /** {@return whether the car came back, by the interval that adds refit scatter} */
        public boolean cameBack() {
            return withRefit.holds(0);
        }
    }

    /**
     * The scatter in the data against the rig record.
     *
     * @param f mean square of the install means over what the record predicts
     * @param df1 degrees of freedom of the data
     * @param df2 degrees of freedom of the prediction
     * @param pValue upper tail: small where the data scatter more than the record says
     */
    public record RecordCheck(double f, double df1, double df2, double pValue) {
    }

    /**
     * The randomisation test.
     *
     * @param pValue share of orders with a difference at least as large
     * @param orders how many orders there are, or were drawn
     * @param exact whether all were counted
     */
    public record Randomisation(double pValue, long orders, boolean exact) {
    }

    /**
     * What happens when one is left out at a time.
     *
     * @param low smallest estimate
     * @param high largest estimate
     * @param changing those without which the verdict is another
     */
    public record LeaveOneOut(double low, double high, List<String> changing) {
        public LeaveOneOut {
            changing = List.copyOf(changing);
        }
    }

    /**
     * A pull that stands far from the others of its install.
     *
     * @param install its install
     * @param pull its name
     * @param deviation from the mean of its install
     */
    public record Outlier(String install, String pull, double deviation) {
    }

    /**
     * The drift found.
     *
     * @param perHour slope of the linear term, in the unit of the values an hour
     * @param standardError its standard error
     */
    public record DriftFound(double perHour, double standardError) {
    }

    /**
     * The mean of one install.
     *
     * @param session its session
     * @param install its label
     * @param part A or B
     * @param pulls pulls used
     * @param mean their mean
     * @param standardDeviation of its pulls; NaN with a single one
     */
    public record InstallMean(String session, String install, Part part, int pulls, double mean,
            double standardDeviation) {
    }
}

package fairpull.domain.finding;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The finding for one measure.
 *
 * @param unit unit of all figures; empty where none is known
 * @param settings how it was judged
 * @param verdict what is said
 * @param worthwhile whether the change is shown to be worthwhile; empty without a worthwhile gain or an interval
 * @param estimate empty where it cannot be judged
 * @param interval empty where it cannot be judged
 * @param equivalence empty without a worthwhile gain or an interval
 * @param scatter the scatter found; empty where it cannot be judged
 * @param installMeansTest the test on install means that anyone can redo; empty where there are too few
 * @param installMeansInterval its interval, at the same level
 * @param tippingScatter the refit scatter at which the nearer end of the interval reaches zero; empty where it holds zero with none
 * @param returnCheck empty with several sessions or a single A
 * @param recordCheck empty without a refit record or without degrees of freedom
 * @param randomisation empty where the order was not drawn
 * @param drift empty where no drift is modelled or nothing can be said
 * @param leaveOnePullOut empty where nothing is judged
 * @param leaveOneInstallOut empty where nothing is judged
 * @param outliers pulls far from their install's mean, flagged and never dropped
 * @param installs the mean of each install, in order
 * @param notices what a reader must know
 */
public record Finding(String unit, JudgeSettings settings, Verdict verdict, Optional<Worthwhile> worthwhile, Optional<Estimate> estimate,
        Optional<Interval> interval, Optional<Checks.Equivalence> equivalence, Optional<Checks.ScatterFound> scatter,
        Optional<Estimate> installMeansTest, Optional<Interval> installMeansInterval, OptionalDouble tippingScatter,
        Optional<Checks.ReturnCheck> returnCheck, Optional<Checks.RecordCheck> recordCheck,
        Optional<Checks.Randomisation> randomisation, Optional<Checks.DriftFound> drift, Optional<Checks.LeaveOneOut> leaveOnePullOut,
        Optional<Checks.LeaveOneOut> leaveOneInstallOut, List<Checks.Outlier> outliers, List<Checks.InstallMean> installs,
        List<Notice> notices) {
    public Finding {
        outliers = List.copyOf(outliers);
        installs = List.copyOf(installs);
        notices = List.copyOf(notices);
    }
}

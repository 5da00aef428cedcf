package fairpull.domain.finding;

import fairpull.domain.plan.Part;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * How the correction factor of the used pulls went under either part: a comparison leans on the correction by as much as they differ.
 *
 * @param leastA least factor under A
 * @param largestA largest factor under A
 * @param leastB least factor under B
 * @param largestB largest factor under B
 */
public record FactorSpread(double leastA, double largestA, double leastB, double largestB) {

    /** {@return the spread over the used pulls whose factor is known; empty where a part has none} */
    public static Optional<FactorSpread> of(List<PullSeen> pulls) {
        DoubleSummaryStatistics a = factors(pulls, Part.A);
        DoubleSummaryStatistics b = factors(pulls, Part.B);
        return a.getCount() == 0 || b.getCount() == 0 ? Optional.empty()
                : Optional.of(new FactorSpread(a.getMin(), a.getMax(), b.getMin(), b.getMax()));
    }

    private static DoubleSummaryStatistics factors(List<PullSeen> pulls, Part part) {
        return pulls.stream().filter(seen -> seen.fate() == Fate.USED && seen.pull().install().startsWith(part.name()))
                .flatMap(seen -> seen.correction().stream()).mapToDouble(PullCorrection::factor).summaryStatistics();
    }
}

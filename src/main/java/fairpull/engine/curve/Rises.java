package fairpull.engine.curve;

import fairpull.domain.pull.Samples;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * The rises of a noisy channel: each from a lowest to the highest value before the channel falls by more than a given amount.
 * Missing numbers are passed over.
 */
final class Rises {
    private final Samples samples;
    private final double reversal;

    /** The rises of a channel in which a fall of more than a share of its whole range ends a rise. */
    Rises(Samples samples, double reversalShare) {
        this.samples = samples;
        DoubleSummaryStatistics known = samples.stream().filter(Double::isFinite).summaryStatistics();
        this.reversal = known.getCount() == 0 ? 0 : reversalShare * (known.getMax() - known.getMin());
    }

    /** {@return the rises between two rows, both included, in order} */
    List<Sweep> between(int first, int last) {
        List<Sweep> rises = new ArrayList<>();
        int low = -1;
        int high = -1;
        for (int row = first; row <= last; row++) {
            double now = samples.at(row);
            if (!Double.isFinite(now)) {
                continue;
            }
            if (low < 0) {
                low = row;
                high = row;
            } else if (now > samples.at(high)) {
                high = row;
            } else if (now <= samples.at(low) || now < samples.at(high) - reversal) {
                add(rises, low, high);
                low = row;
                high = row;
            }
        }
        add(rises, low, high);
        return rises;
    }

    private static void add(List<Sweep> rises, int low, int high) {
        if (high > low) {
            rises.add(new Sweep(low, high));
        }
    }
}

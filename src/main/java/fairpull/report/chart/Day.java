package fairpull.report.chart;

import fairpull.domain.finding.Fate;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.PullId;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One session as the day strip shows it.
 *
 * @param name the session; empty where there is only one
 * @param blocks its installs in the order of the clock
 * @param clockOfZero the time of day at minute 0, in minutes after midnight; empty where no clock time is known
 */
public record Day(String name, List<Block> blocks, OptionalDouble clockOfZero) {
    /**
     * One install.
     *
     * @param label such as {@code A1}
     * @param part what was fitted
     * @param start in minutes of the session
     * @param end in minutes of the session
     * @param marks its pulls
     */
    public record Block(String label, Part part, double start, double end, List<Mark> marks) {
        public Block {
            marks = List.copyOf(marks);
        }

        /** {@return the mean of the pulls used, where there are any with a value} */
        public OptionalDouble mean() {
            return marks.stream().filter(mark -> mark.fate() == Fate.USED).flatMapToDouble(mark -> mark.value().stream()).average();
        }
    }

    /**
     * One pull.
     *
     * @param pull which one
     * @param fate what became of it
     * @param minutes when, in minutes of the session
     * @param value of the measure shown, where there is one
     */
    public record Mark(PullId pull, Fate fate, double minutes, OptionalDouble value) {
    }

    public Day {
        blocks = List.copyOf(blocks);
    }
}

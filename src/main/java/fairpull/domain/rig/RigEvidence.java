package fairpull.domain.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that is known for one key: its records, what they come to together, and whether the rig holds still.
 *
 * @param key what it holds for
 * @param records of that key, in the order of time of their first session
 * @param pooled the layers that at least one record tells, from the innermost
 * @param chart the chart of install means; empty with fewer than two installs
 * @param change the change between sessions; empty where there are too few sessions to tell
 */
public record RigEvidence(RigKey key, List<RigRecord> records, List<Pooled> pooled, Optional<Chart> chart, Optional<Change> change) {
    /**
     * One layer, pooled.
     *
     * @param layer which
     * @param share standard deviation over level
     * @param degreesOfFreedom the sum over records
     * @param low lower end of its interval at {@link #LEVEL}
     * @param high upper end
     * @param records how many records tell it
     * @param recordsAtZero how many estimated it as 0 and so added nothing
     */
    public record Pooled(Layer layer, double share, double degreesOfFreedom, double low, double high, int records, int recordsAtZero) {
        /** The level of the interval of every scatter. */
        public static final double LEVEL = 0.95;
    }

    /**
     * The chart of install means, as shares of the level.
     *
     * @param points in the order of time
     * @param centre mean of the points
     * @param sigma mean moving range / 1.128
     * @param low lower limit
     * @param high upper limit
     * @param runFrom the place of the first point of the first run of eight on one side, where there is one
     */
    public record Chart(List<Point> points, double centre, double sigma, double low, double high, Optional<Integer> runFrom) {
        public Chart {
            points = List.copyOf(points);
        }

        /** {@return how many points lie beyond a limit} */
        public long beyond() {
            return points.stream().filter(Point::beyond).count();
        }
    }

    /** One install mean: its session, its label, its value, and whether it lies beyond a limit. */
    public record Point(String session, String install, double value, boolean beyond) {
    }

    /**
     * Where the sessions part best into two levels.
     *
     * @param fromSession the first session after the change
     * @param pValue share of steady rigs whose sessions part as well
     * @param before mean over level before it
     * @param after mean over level from it on
     * @param sessions how many sessions there are
     */
    public record Change(String fromSession, double pValue, double before, double after, int sessions) {
        /** At or below this p the rig is said to look changed. */
        public static final double LEVEL = 0.05;

        /** {@return whether the rig looks changed} */
        public boolean looksChanged() {
            return pValue <= LEVEL;
        }
    }

    public RigEvidence {
        records = List.copyOf(records);
        pooled = List.copyOf(pooled);
    }

    /** {@return one layer, pooled} */
    public Optional<Pooled> of(Layer layer) {
        return pooled.stream().filter(one -> one.layer() == layer).findFirst();
    }

    /**
     * {@return the repeatability limit over the level: two single pulls that differ in all layers up to {@code outermost} lie within it
     * 19 times in 20; empty where a layer is not known}
     */
    public OptionalDouble repeatabilityLimit(Layer outermost) {
        double variance = 0;
        for (Layer layer : Layer.values()) {
            if (layer.compareTo(outermost) <= 0) {
                Optional<Pooled> known = of(layer);
                if (known.isEmpty()) {
                    return OptionalDouble.empty();
                }
                variance += known.get().share() * known.get().share();
            }
        }
        return OptionalDouble.of(Repeatability.FACTOR * Math.sqrt(variance));
    }
}

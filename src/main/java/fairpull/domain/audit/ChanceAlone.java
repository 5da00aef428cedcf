package fairpull.domain.audit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How often an unchanged car gives as much as was published.
 *
 * @param ordinary at ordinary scatter
 * @param least at the least plausible scatter
 * @param most at the most
 * @param tippingPull the pull scatter, relative, above which that is more than 5 % of unchanged pairs, the other layers in proportion
 * @param points over scatter, from little to as much as is plausible or tips, whichever is more; empty with {@code tippingPull}
 */
public record ChanceAlone(double ordinary, double least, double most, OptionalDouble tippingPull, List<At> points) {
    /** Nothing is known of how such a figure scatters; its chances are no numbers. */
    public static final ChanceAlone UNKNOWN = new ChanceAlone(Double.NaN, Double.NaN, Double.NaN, OptionalDouble.empty(), List.of());

    public ChanceAlone {
        points = List.copyOf(points);
    }

    /**
     * A point over scatter.
     *
     * @param pullScatter relative, the other layers in the proportions of ordinary scatter
     * @param chance how often an unchanged car gives as much
     */
    public record At(double pullScatter, double chance) {
    }
}

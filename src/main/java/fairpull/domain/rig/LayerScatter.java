package fairpull.domain.rig;

import java.util.List;

/**
 * The scatter of one layer, or of several that a table cannot tell apart, relative to the level of the measure.
 *
 * @param layers which, from the innermost; several where they were not repeated apart
 * @param share standard deviation over level; 0 where the data show none
 * @param degreesOfFreedom Satterthwaite's; 0 where the share is 0, which is then no evidence that can be carried on
 * @param shareAtMost a rough upper end: the root of variance + 1.645 standard errors (one-sided 95 %, normal)
 */
public record LayerScatter(List<Layer> layers, double share, double degreesOfFreedom, double shareAtMost) {
    public LayerScatter {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a scatter belongs to at least one layer");
        }
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException("a relative scatter lies from 0 to below 1, was " + share);
        }
        if (!(degreesOfFreedom >= 0) || Double.isInfinite(degreesOfFreedom) || share == 0 && degreesOfFreedom != 0) {
            throw new IllegalArgumentException("degrees of freedom must be 0 or more, and 0 behind a scatter of 0; were "
                    + degreesOfFreedom);
        }
        if (!(shareAtMost >= share) || Double.isInfinite(shareAtMost)) {
            throw new IllegalArgumentException("an upper end must not lie below the scatter, was " + shareAtMost);
        }
    }

    /** {@return whether this is that layer alone, with evidence behind it} */
    public boolean tells(Layer layer) {
        return layers.equals(List.of(layer)) && degreesOfFreedom > 0;
    }
}

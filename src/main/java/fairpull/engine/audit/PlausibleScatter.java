package fairpull.engine.audit;

import fairpull.domain.audit.Printed;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.StatedScatter;
import java.util.Optional;

/**
 * The scatter that a figure is held against: what was stated takes the place of the assumed range, layer by layer.
 *
 * <p>Where no degrees of freedom were stated, a layer is taken as known at ordinary scatter, and at the most plausible one as resting on
 * four (common practice, no source).
 */
public final class PlausibleScatter {
    private static final double FEW = 4;

    private PlausibleScatter() {
    }

    /**
     * The scatter for a figure.
     *
     * @param stated what was stated, if anything was
     * @param level the figure before, above 0
     * @return the range; the assumed one where nothing that fits the figure was stated
     */
    public static ScatterRange of(Optional<StatedScatter> stated, Printed level) {
        Optional<StatedScatter.Layer> pull = stated.map(StatedScatter::pull).filter(layer -> layer.share(level).isPresent());
        Optional<StatedScatter.Layer> refit = stated.flatMap(StatedScatter::refit).filter(layer -> layer.share(level).isPresent());
        Optional<StatedScatter.Layer> day = stated.flatMap(StatedScatter::day).filter(layer -> layer.share(level).isPresent());
        Filled filled = new Filled(pull, refit, day, level);
        return new ScatterRange(filled.over(ScatterShares.LEAST, Double.POSITIVE_INFINITY),
                filled.over(ScatterShares.ORDINARY, Double.POSITIVE_INFINITY), filled.over(ScatterShares.MOST, FEW), pull.isPresent(),
                refit.isPresent());
    }

    private record Filled(Optional<StatedScatter.Layer> pull, Optional<StatedScatter.Layer> refit, Optional<StatedScatter.Layer> day,
            Printed level) {
        ScatterShares over(ScatterShares assumed, double otherwise) {
            return new ScatterShares(share(pull, assumed.pull()), share(refit, assumed.refit()), share(day, assumed.day()),
                    new ScatterShares.Freedom(freedom(pull, otherwise), freedom(refit, otherwise), freedom(day, otherwise)));
        }

        private double share(Optional<StatedScatter.Layer> layer, double assumed) {
            return layer.flatMap(stated -> stated.share(level)).orElse(assumed);
        }

        private static double freedom(Optional<StatedScatter.Layer> layer, double otherwise) {
            return layer.map(stated -> stated.degreesOfFreedom().orElse(otherwise)).orElse(Double.POSITIVE_INFINITY);
        }
    }
}

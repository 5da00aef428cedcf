package fairpull.domain.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How every pull of a test becomes a curve over engine speed.
 *
 * <p>What is empty is not written to a file.
 *
 * @param bandwidthRadPerS the bandwidth to which curves are smoothed: how far the window of the local linear fit reaches to either side of
 *     each speed; empty where they are taken as exported
 * @param grid the speeds at which they are compared; empty where the pulls themselves settle that
 * @param scored what is dropped of every sweep before it is scored; empty where all of it counts
 */
public record CurveSettings(OptionalDouble bandwidthRadPerS, Optional<Grid> grid, Optional<ScoredWindow> scored) {
    /**
     * Evenly spaced engine speeds.
     *
     * @param fromRadPerS the first one
     * @param toRadPerS none lies beyond this
     * @param stepRadPerS from one to the next
     */
    public record Grid(double fromRadPerS, double toRadPerS, double stepRadPerS) {
        public Grid {
            Checks.notNegative("the first speed of a grid", fromRadPerS);
            Checks.positive("the step of a grid", stepRadPerS);
            if (!(toRadPerS - fromRadPerS >= stepRadPerS) || Double.isInfinite(toRadPerS)) {
                throw new IllegalArgumentException("a grid needs room for one step, was " + fromRadPerS + " … " + toRadPerS
                        + " rad/s in steps of " + stepRadPerS);
            }
        }
    }

    public CurveSettings {
        bandwidthRadPerS.ifPresent(width -> Checks.positive("the bandwidth of curves", width));
        Objects.requireNonNull(grid, "the grid of curves");
        Objects.requireNonNull(scored, "the scored window");
        if (bandwidthRadPerS.isEmpty() && grid.isEmpty() && scored.isEmpty()) {
            throw new IllegalArgumentException("the settings of curves say nothing: leave them out");
        }
    }
}

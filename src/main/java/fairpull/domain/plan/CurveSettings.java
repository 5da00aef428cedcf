package fairpull.domain.plan;

import java.util.Objects;
import java.util.Optional;

/**
 * How every pull of a test becomes a curve over engine speed.
 *
 * @param bandwidthRadPerS the bandwidth to which curves are smoothed: how far the window of the local linear fit reaches to
 *     either side of each speed
 * @param grid the speeds at which they are compared; empty where the pulls themselves settle that, and then not written to a file
 */
public record CurveSettings(double bandwidthRadPerS, Optional<Grid> grid) {
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
        Checks.positive("the bandwidth of curves", bandwidthRadPerS);
        Objects.requireNonNull(grid, "the grid of curves");
    }

    /** Curves whose speeds the pulls settle. */
    public CurveSettings(double bandwidthRadPerS) {
        this(bandwidthRadPerS, Optional.empty());
    }
}

package fairpull.engine.judging;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.curve.SpeedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From what is shown at each speed to ranges of speed. */
final class CurveRanges {
    /** A gain that ends within this share of the speeds compared is one near the start of the sweep. Common practice, no source. */
    static final double START_SHARE = 0.15;

    private final SpeedGrid grid;
    private final int[] places;
    private final int[] shown;

    /**
     * Ranges.
     *
     * @param grid the speeds
     * @param places the places on it that were judged, rising
     * @param shown for each of them 1 for a gain, −1 for a loss, 0 for neither
     */
    CurveRanges(SpeedGrid grid, int[] places, int[] shown) {
        this.grid = grid;
        this.places = places;
        this.shown = shown;
    }

    List<SpeedRange> gains() {
        return ranges(1);
    }

    List<SpeedRange> losses() {
        return ranges(-1);
    }

    /** Neighbours on the grid that show the same; a speed that could not be judged ends a range. */
    private List<SpeedRange> ranges(int side) {
        List<SpeedRange> ranges = new ArrayList<>();
        int first = -1;
        for (int j = 0; j < shown.length; j++) {
            if (shown[j] == side) {
                first = first < 0 ? j : first;
                boolean last = j + 1 == shown.length || shown[j + 1] != side || places[j + 1] != places[j] + 1;
                if (last) {
                    ranges.add(new SpeedRange(grid.at(places[first]), grid.at(places[j])));
                    first = -1;
                }
            }
        }
        return ranges;
    }

    /** The share of judged speeds at which a gain is shown. */
    double shareOfGain() {
        int count = 0;
        for (int side : shown) {
            count += side > 0 ? 1 : 0;
        }
        return (double) count / shown.length;
    }

    /** The whole of the gains, where all of them lie near the start of the sweep. */
    Optional<SpeedRange> transientGain() {
        List<SpeedRange> gains = gains();
        if (gains.isEmpty()) {
            return Optional.empty();
        }
        double lowest = grid.at(places[0]);
        double limit = lowest + START_SHARE * (grid.at(places[places.length - 1]) - lowest);
        double end = gains.get(gains.size() - 1).highRadPerS();
        return end <= limit ? Optional.of(new SpeedRange(gains.get(0).lowRadPerS(), end)) : Optional.empty();
    }
}

package fairpull.engine.tracing;

import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.LinePoint;
import java.util.ArrayList;
import java.util.List;

/** Fewer points of a followed line, so that a person can look after them: one every so many columns, and those at its ends and gaps. */
public final class Thinning {
    /** Kept by default: one point in so many columns. */
    public static final int USUAL_STEP_PX = 4;
    /** Sparser points would no longer show the line. */
    public static final int LONGEST_STEP_PX = 100;

    private Thinning() {
    }

    /**
     * Thins a line; no point is moved.
     *
     * @param stepPx columns from one point to the next, 1 … {@value #LONGEST_STEP_PX}
     * @throws IllegalArgumentException if the step is out of its range
     */
    public static FollowedLine of(FollowedLine line, int stepPx) {
        if (stepPx < 1 || stepPx > LONGEST_STEP_PX) {
            throw new IllegalArgumentException("a point every 1 … " + LONGEST_STEP_PX + " pixels, was " + stepPx);
        }
        List<LinePoint> kept = new ArrayList<>();
        for (int place = 0; place < line.points().size(); place++) {
            LinePoint point = line.points().get(place);
            boolean end = place == 0 || place == line.points().size() - 1;
            if (end || point.at().column() % stepPx == 0 || line.gaps().stream().anyMatch(gap -> isBeside(gap, point))) {
                kept.add(point);
            }
        }
        return line.with(kept);
    }

    private static boolean isBeside(LineGap gap, LinePoint point) {
        return Math.abs(point.at().xPx() - gap.fromPx()) <= 1 || Math.abs(point.at().xPx() - gap.toPx()) <= 1;
    }
}

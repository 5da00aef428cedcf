package fairpull.engine.tracing;

import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import java.util.Comparator;
import java.util.Optional;

/** A click moved to the middle of a line of a known colour. */
public final class Snapping {
    /** How far a click may be from the line, in pixels. */
    public static final int REACH_PX = 8;
    /** ΔE*ab up to which the line by the click passes for one of the known colour; JPEG moves the colour of thin lines about. */
    private static final double SAME_COLOUR = 25;
    private static final int SLOPE_COLUMNS = 3;

    private Snapping() {
    }

    /**
     * Snaps a click to a line.
     *
     * @param colour of the line, {@code 0xRRGGBB}
     * @param click in the picture
     * @return the middle of the run of that colour, in the column of the click, that lies nearest to it within {@value #REACH_PX} pixels;
     *         empty where there is none
     */
    public static Optional<LinePoint> nearest(Picture picture, int colour, PixelPoint click) {
        if (!picture.holds(click.column(), click.row())) {
            return Optional.empty();
        }
        Ink ink = new Ink(picture, colour, LineStart.ground(picture, click));
        if (Lab.of(colour).distance(Lab.of(ink.ground())) < SAME_COLOUR) {
            return Optional.empty();
        }
        return run(ink, click.column(), click).map(run -> new LinePoint(new PixelPoint(click.column() + 0.5, run.centre()),
                slope(ink, click, run), PointSource.SNAPPED));
    }

    private static Optional<Run> run(Ink ink, int column, PixelPoint click) {
        return Run.within(ink, column, click.row() - REACH_PX, click.row() + REACH_PX + 1).stream()
                .min(Comparator.comparingDouble(run -> Math.abs(run.centre() - click.yPx())));
    }

    private static double slope(Ink ink, PixelPoint click, Run middle) {
        Optional<Run> left = run(ink, click.column() - SLOPE_COLUMNS, new PixelPoint(click.xPx(), middle.centre()));
        Optional<Run> right = run(ink, click.column() + SLOPE_COLUMNS, new PixelPoint(click.xPx(), middle.centre()));
        if (left.isEmpty() || right.isEmpty()) {
            return 0;
        }
        return (right.get().centre() - left.get().centre()) / (2.0 * SLOPE_COLUMNS);
    }
}

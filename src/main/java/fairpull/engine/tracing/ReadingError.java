package fairpull.engine.tracing;

import fairpull.domain.tracing.PointSource;

/**
 * How far the reading of a chart may be wrong, as standard errors in pixels of the picture.
 *
 * <p>Across the line, for its drawn width w: a pixel is as good as its size, ±½ px with equal chance, which is 1/√12. The middle of what
 * was drawn lies within the line's width: three standard errors to each edge where the middle was found (followed or snapped),
 * u² = 1/12 + (w/6)²; anywhere in it where a person placed the point, u² = (1 + w²)/12; anywhere in twice the width where the line was
 * not seen and its sides were joined, u² = (1 + 4 w²)/12. Down the column, for a line of slope s, that is u √(1 + s²).
 *
 * <p>The two points of an axis were clicked to a pixel each, 1/√12; at a share t of the way from the first to the second one they add
 * ((1 − t)² + t²)/12. That part is common to all points near each other, and to both curves.
 *
 * @see "JCGM 100:2008, 4.3.7, for ±a with equal chance: a/√3; three standard errors to an edge and twice the width are our choice"
 */
final class ReadingError {
    private static final double PIXEL = 1 / 12.0;

    private ReadingError() {
    }

    /** {@return the standard error of a point down its column} */
    static double downPx(double widthPx, double slope, PointSource source) {
        double across = PIXEL + widthPx * widthPx * switch (source) {
            case FOLLOWED, SNAPPED -> 1 / 36.0;
            case PLACED -> 1 / 12.0;
            case BRIDGED -> 4 / 12.0;
        };
        return Math.sqrt(across * (1 + slope * slope));
    }

    /** {@return the standard error that the points of an axis leave, at a share of the way from the first to the second} */
    static double axisPx(double share) {
        return Math.sqrt(PIXEL * ((1 - share) * (1 - share) + share * share));
    }
}

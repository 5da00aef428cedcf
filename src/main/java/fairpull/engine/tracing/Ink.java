package fairpull.engine.tracing;

import fairpull.domain.tracing.Picture;

/**
 * How much of a line's colour a pixel holds, against the ground that the line is drawn on.
 *
 * <p>An anti-aliased pixel is a mixture p = g + α (l − g) of ground g and line l, as drawing programs mix them: in sRGB as it is stored.
 * α is the projection of p − g on l − g, 0 … {@value #STRONGEST}. What p differs from that mixture (ΔE*ab) tells other colours, such as
 * grid lines and other curves, and lowers α from {@value #SURELY} on to nothing at {@value #SURELY_NOT}.
 */
final class Ink {
    /** Below this difference from the mixture a pixel is the line's; what JPEG does to a thin line stays below it. */
    static final double SURELY = 14;
    /** Above it the pixel is something else. */
    static final double SURELY_NOT = 32;
    /** A pixel that looks so unlike the ground is drawn on; light grids are not. */
    private static final double DRAWN = 30;
    private static final double NOTHING = 0.05;
    /** A thin line is nowhere as strong as its colour; where a pixel meets its middle it may pass for more than all of it. */
    private static final double STRONGEST = 1.5;

    private final Picture picture;
    private final int line;
    private final int ground;
    private final Lab groundLab;
    private final double lengthSquared;

    Ink(Picture picture, int line, int ground) {
        this.picture = picture;
        this.line = line;
        this.ground = ground;
        groundLab = Lab.of(ground);
        lengthSquared = along(line);
    }

    int line() {
        return line;
    }

    int ground() {
        return ground;
    }

    Picture picture() {
        return picture;
    }

    /** {@return the share of the line's colour in a pixel, 0 … 1.5; 0 outside the picture} */
    double share(int column, int row) {
        return picture.holds(column, row) ? share(picture.rgb(column, row)) : 0;
    }

    private double share(int pixel) {
        double share = Math.min(STRONGEST, along(pixel) / lengthSquared);
        if (share < NOTHING) {
            return 0;
        }
        double unlike = Lab.of(pixel).distance(Lab.of(mixture(share)));
        return share * Math.max(0, Math.min(1, (SURELY_NOT - unlike) / (SURELY_NOT - SURELY)));
    }

    private double along(int pixel) {
        double sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            sum += (double) (channel(pixel, shift) - channel(ground, shift)) * (channel(line, shift) - channel(ground, shift));
        }
        return sum;
    }

    private int mixture(double share) {
        int mixed = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int level = (int) Math.round(channel(ground, shift) + share * (channel(line, shift) - channel(ground, shift)));
            mixed |= Math.max(0, Math.min(255, level)) << shift;
        }
        return mixed;
    }

    private static int channel(int rgb, int shift) {
        return rgb >> shift & 255;
    }

    /** {@return whether something of another colour is drawn there} */
    boolean isCovered(int column, int row) {
        return picture.holds(column, row) && share(column, row) < NOTHING
                && Lab.of(picture.rgb(column, row)).distance(groundLab) > DRAWN;
    }
}

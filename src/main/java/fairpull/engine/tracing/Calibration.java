package fairpull.engine.tracing;

import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.TracedPoint;
import java.util.Locale;

/**
 * Turns places in a picture into values of its axes and back.
 *
 * <p>With u the unit vector along the x axis and v the one along the y axis, a place p lies the share
 * t = ((p − p₁) × v) / ((p₂ − p₁) × v) of the way from the first to the second point of the x axis, and likewise on the y axis with u.
 * Its value is v₁ + t (v₂ − v₁), on a logarithmic axis v₁ (v₂/v₁)^t. An axis that departs from the edge of the picture by up to
 * {@value #LEVEL_PX} pixels, which clicks do, is taken to run along it. One that departs further is taken to be turned, with the picture,
 * by up to {@value #MOST_TURNED} degrees, if the other one is turned alike.
 */
public final class Calibration {
    /** Departures of a click from the axis that it stands for, in pixels. */
    static final double LEVEL_PX = 2.5;
    /** A chart turned further does not show its curves column by column. */
    static final double MOST_TURNED = 10;
    private static final double SAME_TURN = 0.5;

    private final Axes axes;
    private final double[] across;
    private final double[] up;

    private Calibration(Axes axes, double turn) {
        this.axes = axes;
        across = new double[] {Math.cos(turn), Math.sin(turn)};
        up = new double[] {Math.sin(turn), -Math.cos(turn)};
    }

    /**
     * Makes it from two points an axis.
     *
     * @throws IllegalArgumentException if the axes stand askew, or are turned too far; in words for people
     */
    public static Calibration of(Axes axes) {
        double xTurn = turn(axes.x(), false);
        double yTurn = turn(axes.y(), true);
        requireTurn(xTurn, "x", "level");
        requireTurn(yTurn, "y", "upright");
        boolean level = isStraight(axes.x(), false);
        boolean upright = isStraight(axes.y(), true);
        if (level && upright) {
            return new Calibration(axes, 0);
        }
        double slack = SAME_TURN + slack(axes.x(), false) + slack(axes.y(), true);
        if (Math.abs(xTurn - yTurn) > slack) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "the axes are not square: the points of the x axis lie %.1f° off "
                    + "level, those of the y axis %.1f° off upright; click both points of an axis on the axis itself", xTurn, yTurn));
        }
        double total = length(axes.x(), false) + length(axes.y(), true);
        double mean = (xTurn * length(axes.x(), false) + yTurn * length(axes.y(), true)) / total;
        return new Calibration(axes, Math.toRadians(mean));
    }

    private static void requireTurn(double turn, String name, String along) {
        if (!(Math.abs(turn) <= MOST_TURNED)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "the two points of the %s axis lie %.0f° off %s; click "
                    + "both on the axis itself, or turn the picture first", name, Math.abs(turn), along));
        }
    }

    /** Pixels along the direction in which the axis should run. */
    private static double length(Axis axis, boolean upright) {
        return Math.abs(upright ? axis.second().at().yPx() - axis.first().at().yPx() : axis.second().at().xPx() - axis.first().at().xPx());
    }

    private static double off(Axis axis, boolean upright) {
        PixelPoint from = axis.first().at();
        PixelPoint to = axis.second().at();
        return upright ? (to.xPx() - from.xPx()) * -Math.signum(to.yPx() - from.yPx())
                : (to.yPx() - from.yPx()) * Math.signum(to.xPx() - from.xPx());
    }

    private static boolean isStraight(Axis axis, boolean upright) {
        return Math.abs(off(axis, upright)) <= LEVEL_PX;
    }

    private static double turn(Axis axis, boolean upright) {
        return Math.toDegrees(Math.atan2(off(axis, upright), length(axis, upright)));
    }

    /** By how many degrees an axis seems turned where both clicks are off by as much as clicks are. */
    private static double slack(Axis axis, boolean upright) {
        return Math.toDegrees(Math.atan2(LEVEL_PX, length(axis, upright)));
    }

    /** {@return the value of the x axis at a place} */
    public double x(PixelPoint place) {
        return value(axes.x(), xShare(place));
    }

    /** {@return the value of the y axis at a place} */
    public double y(PixelPoint place) {
        return value(axes.y(), yShare(place));
    }

    private double xShare(PixelPoint place) {
        return share(axes.x(), place, across);
    }

    private double yShare(PixelPoint place) {
        return share(axes.y(), place, up);
    }

    /** The axes are square to each other, so that the cross product with the other one is the projection on this one. */
    private static double share(Axis axis, PixelPoint place, double[] along) {
        PixelPoint from = axis.first().at();
        PixelPoint to = axis.second().at();
        return projected(from, place, along) / projected(from, to, along);
    }

    private static double projected(PixelPoint from, PixelPoint to, double[] along) {
        return (to.xPx() - from.xPx()) * along[0] + (to.yPx() - from.yPx()) * along[1];
    }

    private static double value(Axis axis, double share) {
        double first = axis.first().value();
        double second = axis.second().value();
        return axis.scale() == AxisScale.LINEAR ? first + share * (second - first) : first * Math.pow(second / first, share);
    }

    /** Units of the axis in a pixel at a place: the derivative of its value. */
    private static double perPixel(Axis axis, double share, double[] along) {
        double first = axis.first().value();
        double second = axis.second().value();
        double perShare = axis.scale() == AxisScale.LINEAR ? second - first : value(axis, share) * Math.log(second / first);
        return Math.abs(perShare / projected(axis.first().at(), axis.second().at(), along));
    }

    /**
     * A point of a line in the units of the chart with its reading errors: x is that of the middle of a column and as good as the axis; y
     * has the error down the column and that of its axis, added in squares.
     *
     * @param point in the picture
     * @param widthPx across the line
     */
    public TracedPoint read(LinePoint point, double widthPx) {
        double xShare = xShare(point.at());
        double yShare = yShare(point.at());
        double xError = ReadingError.axisPx(xShare) * perPixel(axes.x(), xShare, across);
        double down = ReadingError.downPx(widthPx, point.slope(), point.source());
        double yError = Math.hypot(down, ReadingError.axisPx(yShare)) * perPixel(axes.y(), yShare, up);
        return new TracedPoint(x(point.at()), xError, y(point.at()), yError, point.at(), point.source());
    }
}

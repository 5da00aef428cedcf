package fairpull.engine.audit;

import fairpull.domain.audit.CurveSeen;
import fairpull.domain.pull.Samples;
import fairpull.engine.check.LastDigit;
import java.util.function.DoubleUnaryOperator;

/**
 * A published curve between its points: linear, with how far what is read off it may be off. That is three standard reading errors, that of
 * the speed taken along the slope, half a unit of the last digit of a table, and a bend of the curve between its points, an eighth of the
 * second difference of neighbouring points (the error of linear interpolation).
 */
final class CurveReading {
    private static final double ERRORS = 3;
    private final CurveSeen curve;
    private final double halfDigit;

    /**
     * What is read off.
     *
     * @param speed where, rad/s
     * @param value in SI
     * @param allowance how far it may be off
     */
    record Value(double speed, double value, double allowance) {
    }

    CurveReading(CurveSeen curve) {
        this.curve = curve;
        DoubleUnaryOperator printed = curve.unit()::fromSi;
        this.halfDigit = curve.isTraced() ? 0 : curve.unit().differenceToSi(0.5 * LastDigit.of(curve.values().map(printed)));
    }

    boolean covers(double speed) {
        return speed >= curve.range().lowRadPerS() && speed <= curve.range().highRadPerS();
    }

    /** {@return the value at a speed that the curve covers} */
    Value at(double speed) {
        Samples speeds = curve.speedsRadPerS();
        int right = endOfInterval(speed);
        double share = (speed - speeds.at(right - 1)) / (speeds.at(right) - speeds.at(right - 1));
        double value = curve.values().at(right - 1) + share * (curve.values().at(right) - curve.values().at(right - 1));
        double between = Math.min(1, 4 * share * (1 - share));
        return new Value(speed, value, Math.max(reading(right - 1), reading(right)) + halfDigit + between * bend(right));
    }

    /** The first point at or beyond a speed, halving what is left to search. */
    private int endOfInterval(double speed) {
        int first = 1;
        int last = curve.size() - 1;
        while (first < last) {
            int middle = (first + last) >>> 1;
            if (curve.speedsRadPerS().at(middle) < speed) {
                first = middle + 1;
            } else {
                last = middle;
            }
        }
        return first;
    }

    /** {@return the highest value; the allowance for a bend is one-sided there, as a top may lie between points} */
    Value highest() {
        int top = 0;
        for (int k = 1; k < curve.size(); k++) {
            top = curve.values().at(k) > curve.values().at(top) ? k : top;
        }
        return new Value(curve.speedsRadPerS().at(top), curve.values().at(top), reading(top) + halfDigit + bend(Math.max(1, top)));
    }

    private double reading(int point) {
        int left = Math.max(0, point - 1);
        int right = Math.min(curve.size() - 1, point + 1);
        double slope = (curve.values().at(right) - curve.values().at(left))
                / (curve.speedsRadPerS().at(right) - curve.speedsRadPerS().at(left));
        return ERRORS * Math.hypot(curve.valueErrors().at(point), slope * curve.speedErrors().at(point));
    }

    /** The larger of the second differences at both ends of the interval that ends at a point. */
    private double bend(int right) {
        return Math.max(secondDifference(right - 1), secondDifference(right)) / 8;
    }

    private double secondDifference(int middle) {
        if (middle < 1 || middle > curve.size() - 2) {
            return 0;
        }
        Samples values = curve.values();
        return Math.abs(values.at(middle - 1) - 2 * values.at(middle) + values.at(middle + 1));
    }
}

package fairpull.engine.audit;

import fairpull.domain.audit.AuditCheck.Side;
import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A curve of power beside one of torque, of one side: what both read at the speeds of the power curve that the other covers.
 *
 * @param side before or after
 * @param names what the curves of power and of torque are called
 * @param power the curve of power
 * @param torque the curve of torque
 * @param points speeds where power is a fifth of its largest or more: below, reading says more than the engine
 */
record PowerAndTorque(Side side, List<String> names, CurveSeen power, CurveSeen torque, List<Point> points) {
    /** A ratio further from 1 is neither rounding nor reading; common practice, no source (as for exports). */
    static final double LIMIT = 0.0035;
    private static final double SHARE_OF_PEAK = 0.2;
    private static final int FEWEST = 5;

    /**
     * Both at one speed.
     *
     * @param speed rad/s
     * @param ratio power ÷ (torque × speed)
     * @param allowance how far reading and rounding allow it to be off, relative
     */
    record Point(double speed, double ratio, double allowance) {
    }

    /**
     * {@return every curve of power beside every one of torque, before and after, where they share five speeds or more; where several of a
     * quantity were published, as of two gears, two that do not agree stand beside each other only if neither agrees with another one}
     */
    static List<PowerAndTorque> of(List<CurvePair> curves) {
        List<PowerAndTorque> all = new ArrayList<>();
        for (CurvePair power : curves.stream().filter(pair -> pair.before().unit().quantity() == Quantity.POWER).toList()) {
            for (CurvePair torque : curves.stream().filter(pair -> pair.before().unit().quantity() == Quantity.TORQUE).toList()) {
                List<String> names = List.of(power.published().name(), torque.published().name());
                all.add(of(Side.BEFORE, names, power.before(), torque.before()));
                all.add(of(Side.AFTER, names, power.after(), torque.after()));
            }
        }
        all.removeIf(both -> both.points.size() < FEWEST);
        List<PowerAndTorque> agreeing = all.stream().filter(PowerAndTorque::agrees).toList();
        return all.stream().filter(both -> agreeing.stream().noneMatch(both::shares) || both.agrees()).toList();
    }

    /** {@return whether power is torque × engine speed along the curves, within reading} */
    boolean agrees() {
        return Math.abs(ratio() - 1) <= LIMIT + allowance();
    }

    /** Of one side, curves are the same where they are one object: two of equal points may have two names. */
    private boolean shares(PowerAndTorque other) {
        return side == other.side && (power == other.power || torque == other.torque);
    }

    private static PowerAndTorque of(Side side, List<String> names, CurveSeen power, CurveSeen torque) {
        CurveReading ofPower = new CurveReading(power);
        CurveReading ofTorque = new CurveReading(torque);
        double least = SHARE_OF_PEAK * ofPower.highest().value();
        List<Point> points = new ArrayList<>();
        for (int k = 0; k < power.size(); k++) {
            double speed = power.speedsRadPerS().at(k);
            CurveReading.Value one = ofPower.at(speed);
            if (ofTorque.covers(speed) && one.value() >= least && one.value() > 0) {
                CurveReading.Value other = ofTorque.at(speed);
                if (other.value() > 0) {
                    points.add(point(one, other));
                }
            }
        }
        return new PowerAndTorque(side, names, power, torque, List.copyOf(points));
    }

    private static Point point(CurveReading.Value power, CurveReading.Value torque) {
        return new Point(power.speed(), power.value() / (torque.value() * power.speed()),
                power.allowance() / power.value() + torque.allowance() / torque.value());
    }

    /** {@return the median ratio} */
    double ratio() {
        return median(points.stream().mapToDouble(Point::ratio).toArray());
    }

    /** {@return the median of what reading allows} */
    double allowance() {
        return median(points.stream().mapToDouble(Point::allowance).toArray());
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}

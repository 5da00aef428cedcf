package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Power that collapses in the last rows of the sweep, as it does when the throttle is lifted while engine speed still rises.
 *
 * <p>Looked at are the {@value #LAST_ROWS} rows of highest speed. A value that lies more than {@value #FALL} below the one before it, or
 * below one of the {@value #LOOK_BACK} before it within {@value #NEAR} of its speed, is a collapse. Without power, torque is looked at.
 * Common practice, no source.
 */
public final class PowerCollapse extends EachPull {
    private static final double FALL = 0.2;
    private static final double NEAR = 0.02;
    private static final int LAST_ROWS = 5;
    private static final int LOOK_BACK = 3;

    public PowerCollapse() {
        super(Code.POWER_COLLAPSES);
    }

    @Override
    Optional<Reading> read(Traced pull) {
        Map<Quantity, Samples> channels = pull.channels().all();
        return List.of(Quantity.POWER, Quantity.TORQUE).stream().filter(channels::containsKey).findFirst()
                .flatMap(quantity -> read(pull, channels.get(quantity)));
    }

    private static Optional<Reading> read(Traced pull, Samples values) {
        int[] rows = Arrays.stream(pull.ofSweep(0, Double.POSITIVE_INFINITY))
                .filter(row -> Double.isFinite(values.at(row))).toArray();
        if (rows.length <= LAST_ROWS) {
            return Optional.empty();
        }
        Samples speed = pull.find(Quantity.ENGINE_SPEED).orElseThrow();
        if (speed.at(rows[0]) > speed.at(rows[rows.length - 1])) {
            reverse(rows);
        }
        double worst = 0;
        double at = speed.at(rows[rows.length - 1]);
        for (int i = rows.length - LAST_ROWS; i < rows.length; i++) {
            for (int back = 1; back <= Math.min(LOOK_BACK, i); back++) {
                double before = values.at(rows[i - back]);
                boolean near = back == 1 || speed.at(rows[i]) <= (1 + NEAR) * speed.at(rows[i - back]);
                double fall = before > 0 && near ? 1 - values.at(rows[i]) / before : 0;
                if (fall > worst) {
                    worst = fall;
                    at = speed.at(rows[i]);
                }
            }
        }
        return Optional.of(Reading.of(worst > FALL, worst, worst, at));
    }

    private static void reverse(int[] rows) {
        for (int i = 0; i < rows.length / 2; i++) {
            int other = rows[rows.length - 1 - i];
            rows[rows.length - 1 - i] = rows[i];
            rows[i] = other;
        }
    }
}

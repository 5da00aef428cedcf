package fairpull.engine.curve;

import fairpull.domain.plan.Definition;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import fairpull.engine.curve.Outcome.Reason;
import java.util.Optional;

/**
 * The time from one speed to a higher one.
 *
 * <p>The watch starts at the last upward crossing of the first speed before the second one is reached, and stops when that is reached,
 * both by linear interpolation in time. From standstill the crossing is the last moment at rest. Only differences of time count.
 */
final class ElapsedTime {
    private ElapsedTime() {
    }

    static Outcome between(Channels channels, Definition.Elapsed elapsed) {
        Optional<Samples> speed = channels.find(elapsed.speed());
        if (speed.isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, elapsed.speed());
        }
        Optional<Samples> time = channels.find(Quantity.TIME);
        if (time.isEmpty()) {
            return Outcome.missing(Reason.CHANNEL_ABSENT, Quantity.TIME);
        }
        return isRising(time.get())
                ? firstRun(time.get(), speed.get(), elapsed)
                : Outcome.missing(Reason.TIME_NOT_RISING, Quantity.TIME);
    }

    /** {@return whether each time stamp is later than the one before it} */
    static boolean isRising(Samples time) {
        for (int row = 1; row < time.size(); row++) {
            if (!(time.at(row) > time.at(row - 1))) {
                return false;
            }
        }
        return true;
    }

    private static Outcome firstRun(Samples time, Samples speed, Definition.Elapsed elapsed) {
        double start = Double.NaN;
        double first = Double.NaN;
        int runs = 0;
        for (int row = 1; row < speed.size(); row++) {
            if (speed.at(row - 1) <= elapsed.fromSi() && speed.at(row) > elapsed.fromSi()) {
                start = crossing(time, speed, row, elapsed.fromSi());
            }
            if (!Double.isNaN(start) && speed.at(row) >= elapsed.toSi()) {
                runs++;
                first = runs == 1 ? crossing(time, speed, row, elapsed.toSi()) - start : first;
                start = Double.NaN;
            }
        }
        return runs > 0 ? new Outcome.Value(first, runs) : Outcome.missing(Reason.SPEEDS_NOT_PASSED, elapsed.speed(),
                speed.stream().min().orElse(Double.NaN), speed.stream().max().orElse(Double.NaN));
    }

    private static double crossing(Samples time, Samples speed, int row, double level) {
        double share = (level - speed.at(row - 1)) / (speed.at(row) - speed.at(row - 1));
        return time.at(row - 1) + share * (time.at(row) - time.at(row - 1));
    }
}

package fairpull.engine.check;

import fairpull.domain.finding.Notice.Code;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Quantity;
import java.util.Optional;

/** Each row of a file is later than the one before it. */
public final class TimeRises extends EachPull {
    public TimeRises() {
        super(Code.TIME_NOT_RISING);
    }

    @Override
    Optional<Reading> read(Traced pull) {
        return pull.find(Quantity.TIME).map(TimeRises::read);
    }

    private static Reading read(Samples time) {
        double[] known = time.stream().filter(Double::isFinite).toArray();
        int back = 0;
        for (int row = 1; row < known.length; row++) {
            back += known[row] > known[row - 1] ? 0 : 1;
        }
        return Reading.of(back > 0, back, (double) back);
    }
}

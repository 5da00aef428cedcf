package fairpull.domain.heat;

import fairpull.domain.pull.Samples;
import java.util.Objects;

/**
 * A logged cool-down.
 *
 * @param timesS seconds since the first reading, never falling; the first is 0
 * @param temperaturesK one a time
 * @param column what the temperature is called in the file
 * @param readingsEach how many readings of the file each stands for; above 1 where a long log was averaged in blocks
 */
public record CoolDownLog(Samples timesS, Samples temperaturesK, String column, int readingsEach) {
    /** Fewer readings tell no time constant. */
    public static final int FEWEST_READINGS = 6;
    /** Longer logs are averaged in blocks to at most so many: more would add time to the search and nothing to the answer. */
    public static final int MOST_READINGS = 2000;

    public CoolDownLog {
        Objects.requireNonNull(column, "column");
        if (timesS.size() != temperaturesK.size() || timesS.size() < FEWEST_READINGS) {
            throw new IllegalArgumentException("a cool-down needs at least " + FEWEST_READINGS + " times and as many temperatures, were "
                    + timesS.size() + " and " + temperaturesK.size());
        }
        for (int i = 1; i < timesS.size(); i++) {
            if (!(timesS.at(i) >= timesS.at(i - 1))) {
                throw new IllegalArgumentException("time must never fall, did at reading " + (i + 1));
            }
        }
        if (readingsEach < 1) {
            throw new IllegalArgumentException("a reading stands for at least one of the file, was " + readingsEach);
        }
        if (timesS.at(0) != 0 || !(timesS.at(timesS.size() - 1) > 0)) {
            throw new IllegalArgumentException("time must begin at 0 and pass");
        }
    }

    /** {@return how many readings there are} */
    public int size() {
        return timesS.size();
    }

    /** {@return seconds from the first reading to the last} */
    public double spanS() {
        return timesS.at(timesS.size() - 1);
    }
}

package fairpull.domain.finding;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What planned looks cost and where they fall.
 *
 * @param inflation how many times the information of a single look the looks need for the power wanted, at least 1; empty where it is out
 *     of reach
 * @param looks each of them
 * @param notices what is to be known of them
 */
public record SizeLooks(OptionalDouble inflation, List<Place> looks, List<Notice> notices) {
    /**
     * One look.
     *
     * @param afterInstalls after how many installs
     * @param informationFraction its share of the information of the whole order
     * @param bound for the change over its standard error, were the scatter known
     * @param level the error rate of this look alone, through which the bound is applied to t
     * @param errorSpent error rate of all looks up to this one
     * @param chance of finding the gain at this look taken alone; empty where it cannot be judged
     */
    public record Place(int afterInstalls, double informationFraction, double bound, double level, double errorSpent,
            OptionalDouble chance) {
    }

    public SizeLooks {
        looks = List.copyOf(looks);
        notices = List.copyOf(notices);
    }
}

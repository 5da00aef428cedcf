package fairpull.domain.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a search found.
 *
 * @param front the days worth choosing, from the shortest to the one that finds the smallest gain
 * @param daysTried orders × pulls × warm-ups that were allowed, whether or not they fitted
 * @param leastMinutes the shortest allowed day that can be judged, whatever the limits; empty where none can be
 * @param leastMoney the cheapest one likewise
 * @param shortfall why no day finds the gain asked for; empty where one does, or where there is none
 */
public record SearchAnswer(List<SearchRow> front, long daysTried, OptionalDouble leastMinutes, OptionalDouble leastMoney,
        Optional<Shortfall> shortfall) {
    public SearchAnswer {
        front = List.copyOf(front);
    }
}

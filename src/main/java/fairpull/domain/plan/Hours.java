package fairpull.domain.plan;

import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The working hours of a session.
 *
 * @param start start of day: when the set-up begins
 * @param end end of day; empty where it is open
 * @param breaks in their order, none overlapping another
 */
public record Hours(LocalTime start, Optional<LocalTime> end, List<Break> breaks) {
    public Hours {
        Objects.requireNonNull(start, "the start of day");
        breaks = List.copyOf(breaks);
        if (end.isPresent() && !end.get().isAfter(start)) {
            throw new IllegalArgumentException("the day ends at " + end.get() + ", not after its start at " + start);
        }
        double free = start.toSecondOfDay();
        for (Break pause : breaks) {
            if (pause.start().toSecondOfDay() < free) {
                throw new IllegalArgumentException("the break at " + pause.start()
                        + " starts before the day does, or before the break before it is over");
            }
            free = pause.endS();
        }
        if (end.isPresent() && free > end.get().toSecondOfDay()) {
            throw new IllegalArgumentException("a break lasts beyond the end of day at " + end.get());
        }
    }

    /** {@return the same hours with another start of day} */
    public Hours startingAt(LocalTime other) {
        return new Hours(other, end, breaks);
    }

    /** {@return the same hours with another end of day} */
    public Hours endingAt(LocalTime other) {
        return new Hours(start, Optional.of(other), breaks);
    }
}

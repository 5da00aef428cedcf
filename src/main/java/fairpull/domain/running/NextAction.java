package fairpull.domain.running;

import fairpull.domain.pull.PullId;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Optional;

/**
 * What is to be done next.
 *
 * @param kind what
 * @param install the install that it belongs to; empty when the day is done
 * @param pull the pull that is next, also while a break or a swap goes before it
 * @param again whether that pull was started before and aborted
 * @param due when it is planned, behind what really happened; empty where it may start at any time
 * @param earliest before this the car is warmer than at the other pulls
 * @param latest after this it is colder
 */
public record NextAction(Kind kind, String install, Optional<PullId> pull, boolean again, Optional<OffsetDateTime> due,
        Optional<OffsetDateTime> earliest, Optional<OffsetDateTime> latest) {
    /** What can be next. */
    public enum Kind {
        SET_UP, WARM_UP, PULL, SWAP, SWAP_UNDER_WAY, BREAK, LOOK, DONE
    }

    public NextAction {
        Objects.requireNonNull(kind, "the kind of action");
        Objects.requireNonNull(install, "the install of an action");
    }

    /** Where its count-down stands. */
    public enum CountDown {
        /** Nothing is due. */
        NONE,
        /** Too early. */
        WAIT,
        /** It may start; the count-down still runs. */
        OPEN,
        /** The count-down has ended. */
        DUE,
        /** Too late. */
        LATE
    }

    /** {@return where its count-down stands at a time; what is due without a window is late at once} */
    public CountDown countDown(OffsetDateTime now) {
        if (due.isEmpty()) {
            return CountDown.NONE;
        }
        if (now.isBefore(due.get())) {
            return earliest.isPresent() && !now.isBefore(earliest.get()) ? CountDown.OPEN : CountDown.WAIT;
        }
        return now.isAfter(latest.orElse(due.get())) ? CountDown.LATE : CountDown.DUE;
    }

    /** {@return an action that may start at any time} */
    public static NextAction atAnyTime(Kind kind, String install) {
        return new NextAction(kind, install, Optional.empty(), false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** {@return the same action, due at a time} */
    public NextAction dueAt(OffsetDateTime time) {
        return new NextAction(kind, install, pull, again, Optional.of(time), earliest, latest);
    }
}

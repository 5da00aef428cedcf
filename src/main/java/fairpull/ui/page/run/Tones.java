package fairpull.ui.page.run;

import fairpull.domain.running.NextAction;
import fairpull.domain.running.NextAction.CountDown;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/** When a tone sounds: at the end of a count-down, and again where it is too late. What is shown beside it says the same in words. */
final class Tones {
    static final double DUE_HZ = 880;
    static final double LATE_HZ = 440;

    private Optional<NextAction> before = Optional.empty();
    private CountDown stood = CountDown.NONE;

    /** {@return the tone that sounds now, in hertz; empty where none does} */
    OptionalDouble at(NextAction next, OffsetDateTime now) {
        CountDown stands = next.countDown(now);
        boolean same = before.filter(one -> one.pull().equals(next.pull()) && one.install().equals(next.install())).isPresent();
        boolean breakOver = same && before.get().kind() == NextAction.Kind.BREAK && next.kind() != NextAction.Kind.BREAK;
        boolean wasEarly = stood == CountDown.WAIT || stood == CountDown.OPEN;
        boolean isTime = stands == CountDown.DUE || stands == CountDown.LATE;
        boolean late = same && stood == CountDown.DUE && stands == CountDown.LATE;
        before = Optional.of(next);
        stood = stands;
        return breakOver || same && wasEarly && isTime ? OptionalDouble.of(DUE_HZ) : late ? OptionalDouble.of(LATE_HZ)
                : OptionalDouble.empty();
    }
}

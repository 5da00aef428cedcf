package fairpull.domain.heat;

import java.util.List;
import java.util.Optional;

/**
 * The answer about heat.
 *
 * @param log the cool-down, where there was one
 * @param choice what was fitted to it
 * @param modes the time constants used, fitted or typed
 * @param question what was asked
 * @param plan what the heat asks of the day
 * @param notices what a reader must know
 */
public record SoakAnswer(Optional<CoolDownLog> log, Optional<ModeChoice> choice, List<Mode> modes, SoakQuestion question, SoakPlan plan,
                         List<HeatNotice> notices) {
    public SoakAnswer {
        modes = List.copyOf(modes);
        notices = List.copyOf(notices);
        if (log.isPresent() != choice.isPresent()) {
            throw new IllegalArgumentException("a log is fitted, and only a log");
        }
    }

    /** {@return whether the log tells its time constants too loosely for any figure of the plan to be shown} */
    public boolean cannotSay() {
        return notices.stream().anyMatch(notice -> notice.code() == HeatNotice.Code.LOG_CANNOT_SAY);
    }
}

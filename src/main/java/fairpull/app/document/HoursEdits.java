package fairpull.app.document;

import fairpull.domain.plan.Break;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Edits of working hours: one time for all sessions, or one a session. What else a session has of its own stays its own. */
public final class HoursEdits {
    private static final String START_FIRST = "say the start of day first";

    private HoursEdits() {
    }

    private interface Change<T> {
        Optional<Hours> of(Session session, T typed);
    }

    /** {@return an edit of when the sessions start; without a start a session has no hours, and so no end and no breaks} */
    public static Edit starts(List<Optional<LocalTime>> times) {
        return edit(times, (session, typed) -> typed.map(at -> session.hours().map(old -> old.startingAt(at))
                .orElseGet(() -> new Hours(at, Optional.empty(), List.of()))));
    }

    /** {@return an edit of when the sessions must be done} */
    public static Edit ends(List<Optional<LocalTime>> times) {
        return edit(times, (session, typed) -> {
            if (session.hours().isEmpty() && typed.isPresent()) {
                throw new IllegalArgumentException(START_FIRST);
            }
            return session.hours().map(old -> new Hours(old.start(), typed, old.breaks()));
        });
    }

    /** {@return an edit of the breaks of the sessions} */
    public static Edit breaks(List<List<Break>> days) {
        return edit(days, (session, typed) -> {
            if (session.hours().isEmpty() && !typed.isEmpty()) {
                throw new IllegalArgumentException(START_FIRST);
            }
            return session.hours().map(old -> new Hours(old.start(), old.end(), typed));
        });
    }

    private static <T> Edit edit(List<T> times, Change<T> change) {
        return Edit.typing("working hours", "hours", plan -> changed(plan, times, change));
    }

    private static <T> Plan changed(Plan plan, List<T> times, Change<T> change) {
        List<Session> old = plan.sequence().sessions();
        if (times.size() != 1 && times.size() != old.size()) {
            throw new IllegalArgumentException(old.size() == 1 ? "hours of one day; the test has no second one"
                    : "the same for all days, or " + old.size() + " parted by |");
        }
        List<Session> sessions = new ArrayList<>();
        for (int place = 0; place < old.size(); place++) {
            Session session = old.get(place);
            T typed = times.get(times.size() == 1 ? 0 : place);
            sessions.add(new Session(session.name(), session.installs(), change.of(session, typed)));
        }
        return plan.with(plan.sequence().withLabelled(sessions));
    }
}

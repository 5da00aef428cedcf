package fairpull.report.write;

import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * When everything on a sheet begins if the day goes as planned: by the clock, hours past midnight counted on (24:30), or counted from the
 * start of the day.
 */
final class SheetClock {
    private static final double SECONDS_A_MINUTE = 60;
    private static final int MINUTES_AN_HOUR = 60;

    private final Sequence sequence;
    private final Map<PullId, Double> minutes;
    private final Optional<LocalTime> start;

    SheetClock(Sequence sequence, Optional<LocalTime> start) {
        this.sequence = sequence;
        this.minutes = PlannedClock.of(sequence).minutes();
        this.start = start;
    }

    /** {@return when the set-up begins} */
    String begin() {
        return shown(0);
    }

    /** {@return when a pull begins} */
    String of(PullId pull) {
        return shown(setUp() + minutes.get(pull));
    }

    /** {@return when the work before an install begins: its set-up, or its swap} */
    String before(Session session, int install) {
        return install == 0 ? begin() : shown(setUp() + doneWith(session, install - 1));
    }

    /** {@return when the last pull of a session is done} */
    String end(Session session) {
        return shown(setUp() + doneWith(session, session.installs().size() - 1));
    }

    private double setUp() {
        return sequence.setUpS() / SECONDS_A_MINUTE;
    }

    private double doneWith(Session session, int install) {
        List<PullId> pulls = PlannedClock.pullsOf(session.installs().get(install));
        return minutes.get(pulls.get(pulls.size() - 1)) + sequence.pullIntervalS() / SECONDS_A_MINUTE;
    }

    private String shown(double passed) {
        long whole = Math.round(passed);
        if (start.isEmpty()) {
            return String.format(Locale.ROOT, "+%d:%02d", whole / MINUTES_AN_HOUR, whole % MINUTES_AN_HOUR);
        }
        long ofDay = start.get().getHour() * MINUTES_AN_HOUR + start.get().getMinute() + whole;
        return String.format(Locale.ROOT, "%d:%02d", ofDay / MINUTES_AN_HOUR, ofDay % MINUTES_AN_HOUR);
    }
}

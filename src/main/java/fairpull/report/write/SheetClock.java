package fairpull.report.write;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.day.Pace;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.report.wording.SheetWords;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * When everything in a session begins if the day goes as planned: by the clock where its start of day is planned, hours past midnight
 * counted on (24:30); else counted from the start of the session.
 */
final class SheetClock {
    private static final int SECONDS_A_MINUTE = 60;
    private static final int MINUTES_AN_HOUR = 60;

    private final DayClock day;

    SheetClock(Session session, Sequence sequence) {
        this.day = DayClock.of(session, Pace.of(sequence));
    }

    /** {@return from when to when, and how far beyond the end of day} */
    String span() {
        return SheetWords.span(shown(day.startS()), shown(day.finishS()), day.lateS() / SECONDS_A_MINUTE);
    }

    /** {@return what happens before the first pull of an install} */
    List<DayEvent> workBefore(String install) {
        return eventsOf(install).takeWhile(event -> !event.kind().isPull()).toList();
    }

    /** {@return the pulls of an install, and the breaks between them} */
    List<DayEvent> pulls(String install) {
        return eventsOf(install).dropWhile(event -> !event.kind().isPull()).toList();
    }

    private Stream<DayEvent> eventsOf(String install) {
        return day.events().stream().filter(event -> event.install().equals(install));
    }

    /** {@return when something starts} */
    String start(DayEvent event) {
        return shown(event.startS());
    }

    private String shown(double seconds) {
        long minutes = Math.round(seconds / SECONDS_A_MINUTE);
        return String.format(Locale.ROOT, day.hours().isPresent() ? "%d:%02d" : "+%d:%02d", minutes / MINUTES_AN_HOUR,
                minutes % MINUTES_AN_HOUR);
    }
}

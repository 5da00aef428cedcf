package fairpull.io.json;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.day.DayFit;
import fairpull.domain.day.Remedy;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;

/** The clock of a plan and what would make it fit, as JSON. Minutes count from the start of the session. */
final class DayJson {
    private static final double SECONDS_A_MINUTE = 60;

    private DayJson() {
    }

    static void fill(Tree tree, DayFit fit) {
        tree.flag("fits", fit.fits())
                .trees("clock", fit.days(), DayJson::day)
                .trees("remedies", fit.remedies(), DayJson::remedy);
    }

    private static void day(Tree tree, DayClock day) {
        tree.text("session", day.session());
        hours(tree, day.hours());
        tree.number("minutes", day.minutes()).number("minutesLate", day.lateS() / SECONDS_A_MINUTE)
                .trees("events", day.events(), (element, event) -> event(element, event, day.startS()));
    }

    private static void hours(Tree tree, Optional<Hours> hours) {
        tree.text("start", hours.map(Hours::start).map(LocalTime::toString).orElse(null))
                .text("end", hours.flatMap(Hours::end).map(LocalTime::toString).orElse(null));
    }

    private static void event(Tree tree, DayEvent event, double startS) {
        tree.text("kind", word(event.kind())).text("install", event.install());
        if (event.kind().isPull()) {
            tree.whole("number", event.number());
        } else {
            tree.nothing("number");
        }
        tree.number("startMinutes", (event.startS() - startS) / SECONDS_A_MINUTE)
                .number("endMinutes", (event.endS() - startS) / SECONDS_A_MINUTE);
    }

    private static void remedy(Tree tree, Remedy remedy) {
        tree.text("kind", word(remedy.kind()))
                .text("sequence", remedy.sequence().letters())
                .whole("pulls", remedy.sequence().installs().mapToInt(Install::countedPulls).max().orElseThrow())
                .whole("warmUps", remedy.sequence().installs().mapToInt(Install::warmUpPulls).max().orElseThrow())
                .trees("sessions", remedy.sequence().sessions(), DayJson::session)
                .number("detectableGain", remedy.detectableGain());
    }

    private static void session(Tree tree, Session session) {
        tree.text("session", session.name());
        hours(tree, session.hours());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package fairpull.report.wording;

import fairpull.domain.day.DayClock;
import fairpull.domain.day.DayEvent;
import fairpull.domain.day.DayFit;
import fairpull.domain.day.Remedy;
import fairpull.domain.plan.Hours;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** When everything happens, whether it fits, and what would. */
public final class DayWords {
    private static final int SECONDS_A_MINUTE = 60;
    private static final int MINUTES_A_DAY = 24 * 60;

    private DayWords() {
    }

    /** {@return the whole of a session in a sentence} */
    public static String day(DayClock day) {
        double setUp = day.installs().get(0).startS() - day.startS();
        Map<Double, String> parts = new TreeMap<>();
        day.events().stream().filter(event -> event.kind() == DayEvent.Kind.BREAK)
                .forEach(pause -> parts.put(pause.startS(), "break " + fromTo(day, pause.startS(), pause.endS())));
        day.installs().forEach(span -> parts.merge(span.startS(), span.install() + " " + fromTo(day, span.startS(), span.endS()),
                (pause, install) -> pause + "; " + install));
        String start = (day.hours().isPresent() ? "starts at " + at(day, day.startS()) : "from its start")
                + (setUp > 0 ? ", first pull after " + duration(setUp) : "");
        return capitalised(day.session()) + ": " + start + "; " + String.join("; ", parts.values()) + "; " + finish(day) + ".";
    }

    private static String finish(DayClock day) {
        if (day.hours().isEmpty()) {
            return "done after " + duration(day.finishS());
        }
        String done = "done at " + at(day, day.finishS());
        return day.hours().flatMap(Hours::end).map(end -> {
            double spare = end.toSecondOfDay() - day.finishS();
            String of = " the end of day at " + end;
            return day.lateS() > 0 ? done + ", " + duration(day.lateS()) + " after" + of
                    : spare < SECONDS_A_MINUTE ? done + ", just at" + of : done + ", " + duration(spare) + " before" + of;
        }).orElse(done);
    }

    /** {@return what of the day a reader must know: sessions that do not fit, breaks in which the car cools down} */
    public static List<String> warnings(DayFit fit) {
        List<String> warnings = new ArrayList<>();
        for (DayClock day : fit.days()) {
            if (day.lateS() > 0) {
                warnings.add(capitalised(day.session()) + " does not fit: it is done at " + at(day, day.finishS()) + ", "
                        + duration(day.lateS()) + " after the end of day at " + day.hours().flatMap(Hours::end).orElseThrow() + ".");
            }
            day.breaksWithinInstalls().forEach(pause -> warnings.add(withinInstall(day, pause)));
        }
        return warnings;
    }

    private static String withinInstall(DayClock day, DayEvent pause) {
        DayClock.Span span = day.installs().stream().filter(one -> one.install().equals(pause.install())).findFirst().orElseThrow();
        double driven = day.events().stream().filter(event -> event.kind().isPull() && event.install().equals(pause.install()))
                .mapToDouble(event -> event.endS() - event.startS()).sum();
        double after = span.startS() + driven;
        return "The break at " + at(day, pause.startS()) + " falls between pulls of " + pause.install()
                + ", and the car cools down in it: move it to a swap (to " + at(day, span.startS()) + ", before the first pull of "
                + pause.install() + ", or to " + at(day, after) + ", after its last), or plan warm-up pulls after it.";
    }

    /** {@return what the changes that would make a plan fit begin with} */
    public static String remediesHead(DayFit fit) {
        return fit.remedies().isEmpty() ? "No single change would make it fit; plan fewer pulls and installs, or more days."
                : "Any one of these would fit:";
    }

    /** {@return every change that would make the plan fit, with what it costs; nothing where it fits} */
    public static List<String> remedies(Plan plan, DayFit fit) {
        String unit = plan.question().deciding().unit().symbol();
        return fit.remedies().stream().map(remedy -> change(plan.sequence(), remedy)
                + cost(fit.detectableGain(), remedy.detectableGain(), unit) + ".").toList();
    }

    private static String change(Sequence planned, Remedy remedy) {
        Sequence other = remedy.sequence();
        return switch (remedy.kind()) {
            case FEWER_WARM_UPS -> Numbers.count(warmUps(other), "warm-up pull") + " per install instead of " + warmUps(planned)
                    + ", if the car is warm after it";
            case FEWER_PULLS -> Numbers.count(pulls(other), "counted pull") + " per install instead of " + pulls(planned);
            case FEWER_INSTALLS -> other.letters() + " instead of " + planned.letters();
            case START_EARLIER -> changedHours(planned, other, "start of day at ", session -> session.hours().orElseThrow().start());
            case END_LATER -> changedHours(planned, other, "end of day at ",
                    session -> session.hours().flatMap(Hours::end).orElseThrow());
            case SECOND_DAY -> "one day more of the same hours: " + other.letters();
        };
    }

    private static int warmUps(Sequence sequence) {
        return sequence.installs().mapToInt(Install::warmUpPulls).max().orElseThrow();
    }

    private static int pulls(Sequence sequence) {
        return sequence.installs().mapToInt(Install::countedPulls).max().orElseThrow();
    }

    private interface TimeOf {
        LocalTime of(Session session);
    }

    private static String changedHours(Sequence planned, Sequence other, String what, TimeOf time) {
        List<String> changes = new ArrayList<>();
        for (int i = 0; i < planned.sessions().size(); i++) {
            Session before = planned.sessions().get(i);
            Session after = other.sessions().get(i);
            if (!before.hours().equals(after.hours())) {
                changes.add(what + time.of(after) + " instead of " + time.of(before)
                        + (planned.sessions().size() > 1 ? " (" + before.name() + ")" : ""));
            }
        }
        return changes.stream().collect(Collectors.joining("; "));
    }

    private static String cost(OptionalDouble before, OptionalDouble after, String unit) {
        if (before.isEmpty() || after.isEmpty()) {
            return "";
        }
        String found = SizeWords.detectable(after.getAsDouble(), unit);
        String planned = SizeWords.detectable(before.getAsDouble(), unit);
        return found.equals(planned) ? "; the smallest gain found stays " + found
                : "; the smallest gain found is " + found + " instead of " + planned;
    }

    private static String fromTo(DayClock day, double startS, double endS) {
        return at(day, startS) + " to " + at(day, endS);
    }

    /** {@return a time of day; where the start of day is not planned, hours and minutes from it} */
    public static String at(DayClock day, double seconds) {
        long minutes = Math.round(seconds / SECONDS_A_MINUTE);
        if (day.hours().isEmpty()) {
            return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
        }
        String clock = String.format(Locale.ROOT, "%02d:%02d", Math.floorMod(minutes, MINUTES_A_DAY) / 60, Math.floorMod(minutes, 60));
        long days = Math.floorDiv(minutes, MINUTES_A_DAY);
        return days == 0 ? clock
                : clock + (days == 1 ? " the next day" : days == -1 ? " the day before" : " " + days + " days later");
    }

    private static String duration(double seconds) {
        return Numbers.duration(seconds / SECONDS_A_MINUTE);
    }

    private static String capitalised(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}

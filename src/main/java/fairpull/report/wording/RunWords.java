package fairpull.report.wording;

import fairpull.domain.finding.Checks;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Scatter;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PullId;
import fairpull.domain.running.Cut;
import fairpull.domain.running.DayProgress;
import fairpull.domain.running.GateNow;
import fairpull.domain.running.NextAction;
import fairpull.domain.running.ScatterSoFar;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.UnitSystem;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Locale;
import java.util.Optional;

/** What is said while a day is run. Nothing here tells of the change: that waits for a planned look. */
public final class RunWords {
    private static final DateTimeFormatter DAY_AND_MINUTE = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final int SECONDS_A_MINUTE = 60;
    private static final int MOST_NAMED = 12;

    private RunWords() {
    }

    /** {@return the action in a few words, to be read from three metres} */
    public static String head(NextAction next) {
        return switch (next.kind()) {
            case SET_UP -> "Set up " + next.install();
            case WARM_UP -> "Warm-up " + next.pull().orElseThrow().number() + " on " + next.install();
            case PULL -> "Pull " + next.pull().orElseThrow().number() + " on " + next.install();
            case SWAP -> "Swap to " + next.install();
            case SWAP_UNDER_WAY -> "Swapping to " + next.install();
            case BREAK -> "Break";
            case LOOK -> "Look at the data";
            case DONE -> "The day is done";
        };
    }

    /** {@return what belongs to the action: which part goes on, which pull follows a break, that it is run again} */
    public static String beside(NextAction next, Plan plan, boolean blind) {
        return switch (next.kind()) {
            case SET_UP, SWAP, SWAP_UNDER_WAY -> blind || next.install().isEmpty() ? ""
                    : "on goes: " + (next.install().startsWith(Part.A.name()) ? plan.question().partA() : plan.question().partB());
            case BREAK -> "then " + pull(next.pull().orElseThrow());
            case LOOK -> "planned here, before the next swap; what it shows stands on Finding";
            case DONE -> "";
            case WARM_UP, PULL -> next.again() ? "again: it was aborted" : "";
        };
    }

    private static String pull(PullId pull) {
        return (pull.warmUp() ? "warm-up " : "pull ") + pull.number() + " on " + pull.install();
    }

    /** {@return what the count-down counts} */
    public static String counting(NextAction next, OffsetDateTime now) {
        if (next.due().isEmpty()) {
            return "";
        }
        boolean late = now.isAfter(next.due().get());
        return switch (next.kind()) {
            case SWAP_UNDER_WAY -> late ? "longer than planned by" : "planned to be over in";
            case BREAK -> "over in";
            default -> late ? "late by" : "starts in";
        };
    }

    /** {@return the time left, or passed, in minutes and seconds; empty where nothing is due} */
    public static String clock(NextAction next, OffsetDateTime now) {
        return next.due().map(due -> {
            long seconds = Math.abs(Math.round(Duration.between(now, due).toMillis() / 1000.0));
            return String.format(Locale.ROOT, "%d:%02d", seconds / SECONDS_A_MINUTE, seconds % SECONDS_A_MINUTE);
        }).orElse("");
    }

    /** {@return a sign that needs no colour: wait, now, when ready, or late; empty where nothing is next} */
    public static String sign(NextAction next, OffsetDateTime now) {
        boolean swapping = next.kind() == NextAction.Kind.SWAP_UNDER_WAY;
        return switch (next.countDown(now)) {
            case NONE -> next.kind() == NextAction.Kind.DONE ? "" : "▶ when ready";
            case WAIT -> swapping ? "‖ under way" : "‖ wait";
            case OPEN, DUE -> "▶ now";
            case LATE -> swapping ? "■ over time" : "■ late";
        };
    }

    /** {@return that the car is cold again, since when} */
    public static String left(OffsetDateTime since) {
        return "the car has stood since " + DAY_AND_MINUTE.format(since) + " and is cold: warm it up before the next pull";
    }

    /** {@return that nothing can be counted down} */
    public static String clockSetBack() {
        return "the last pull lies in the future of this computer’s clock, which was set back: set it right, and keep the interval by hand";
    }

    /** {@return between which times it may start} */
    public static String window(NextAction next) {
        return next.earliest().map(from -> "earliest " + MINUTE.format(from)
                + next.latest().map(to -> ", latest " + MINUTE.format(to)).orElse("")).orElse("");
    }

    /** {@return a sentence with times of the day, which says so where the clock of the computer shows another hour} */
    public static String elsewhere(String times, OffsetDateTime day, OffsetDateTime computer) {
        return times.isEmpty() || day.getOffset().equals(computer.getOffset()) ? times
                : times + "\nby the day’s clock (" + Times.zone(day) + "); this computer shows " + MINUTE.format(computer);
    }

    /** {@return the band of a gate} */
    public static String band(GateNow now, UnitSystem system) {
        Unit unit = PlanWords.unitOf(now.gate().condition(), system);
        if (now.lowSi().isEmpty()) {
            return now.setsReference() ? "sets the reference" : "reference not read";
        }
        return reading(unit.fromSi(now.lowSi().getAsDouble())) + " … " + reading(unit.fromSi(now.highSi().getAsDouble()))
                + Numbers.THIN + unit.symbol();
    }

    /** {@return how a gate stands, in words beside a sign} */
    public static String standing(GateNow now, UnitSystem system) {
        return switch (now.state()) {
            case NOT_READ -> "– not read";
            case OPEN -> "? open: note the reference";
            case HOLDS -> now.lowSi().isEmpty() ? "✓ read" : "✓ holds";
            case BROKEN -> "✗ " + off(now, system) + now.overridden().map(reason -> "; goes on: " + reason).orElse("");
        };
    }

    private static String off(GateNow now, UnitSystem system) {
        Unit unit = PlanWords.unitOf(now.gate().condition(), system);
        double read = now.readingSi().orElseThrow();
        double low = now.lowSi().orElse(read);
        boolean below = read < low;
        double by = unit.differenceFromSi(below ? low - read : read - now.highSi().orElse(read));
        String in = now.gate().condition().quantity() == Quantity.TEMPERATURE && system == UnitSystem.METRIC
                ? "K" : unit.symbol();
        return reading(by) + Numbers.THIN + in + (below ? " too low" : " too high");
    }

    /** {@return a reading as it stands in its field; empty where there is none} */
    public static String typed(GateNow now, UnitSystem system) {
        Unit unit = PlanWords.unitOf(now.gate().condition(), system);
        return now.readingSi().isEmpty() ? "" : reading(unit.fromSi(now.readingSi().getAsDouble())) + Numbers.THIN + unit.symbol();
    }

    private static String reading(double value) {
        return Numbers.given(Math.round(value * 10) / 10.0);
    }

    /** {@return what no longer fits, and what to drop} */
    public static String cut(Cut cut, String unit) {
        String late = "The day now runs " + Numbers.duration(Math.max(1, cut.lateS() / SECONDS_A_MINUTE)) + " beyond its end. ";
        if (cut.dropped().isEmpty()) {
            return late + "No choice of pulls to drop makes it fit: end later, or go on another day.";
        }
        return late + "Dropping " + listed(cut.dropped()) + " costs least: " + cost(cut, unit) + ".";
    }

    private static String some(List<PullId> pulls) {
        return pulls.size() <= MOST_NAMED ? listed(pulls)
                : String.join(", ", pulls.stream().limit(MOST_NAMED).map(PullId::toString).toList()) + " and "
                + (pulls.size() - MOST_NAMED) + " more";
    }

    /** {@return some pulls, the last one after an “and”} */
    public static String listed(List<PullId> pulls) {
        List<String> names = new ArrayList<>(pulls.stream().map(PullId::toString).toList());
        String last = names.remove(names.size() - 1);
        return names.isEmpty() ? last : String.join(", ", names) + " and " + last;
    }

    private static String cost(Cut cut, String unit) {
        if (cut.gainBefore().isEmpty() || cut.gainAfter().isEmpty()) {
            return "what it costs is not known without figures for scatter";
        }
        String after = SizeWords.detectable(cut.gainAfter().getAsDouble(), unit);
        String before = SizeWords.detectable(cut.gainBefore().getAsDouble(), unit);
        return after.equals(before) ? "the smallest gain found stays " + after
                : "the smallest gain found becomes " + after + " instead of " + before;
    }

    /** {@return the scatter so far beside that of the plan} */
    public static String scatter(ScatterSoFar scatter, Optional<Scatter> planned, Unit unit) {
        Numbers numbers = Numbers.resolving(scatter.standardDeviation(), unit.symbol());
        String found = "Pull scatter " + numbers.with(scatter.standardDeviation()) + " ("
                + Numbers.withDegreesOfFreedom(scatter.degreesOfFreedom()) + ")";
        return found + planned.map(known -> "; planned with " + Numbers.brief(unit.differenceFromSi(known.standardDeviationSi()),
                unit.symbol())).orElse("") + ".";
    }

    /** {@return whether the car came back, as soon as A is fitted again} */
    public static String returnCheck(Checks.ReturnCheck check, String unit) {
        Numbers numbers = Numbers.resolving(Math.abs(check.withRefit().high() - check.withRefit().low()) / 2, unit);
        String interval = "Back at A: last A less first A " + numbers.signed(check.difference()) + " ("
                + Numbers.level(check.withRefit().level()) + " interval " + numbers.signedBare(check.withRefit().low()) + " to "
                + numbers.signed(check.withRefit().high()) + ")";
        return interval + (!check.byRecord() ? ", by pull scatter alone; refitting adds to it."
                : check.cameBack() ? ": it holds 0, so nothing shows that the car changed."
                : ": the car did not come back; look for what changed.");
    }

    /**
     * {@return what is known of a pull while the day is run}
     *
     * @param isPassed whether the day went past it without it
     * @param value its value; empty for blind eyes, and where there is none
     */
    public static String pull(PullId pull, DayLog log, boolean isPassed, Optional<String> value) {
        List<String> known = new ArrayList<>();
        Optional.ofNullable(log.aborted().get(pull)).ifPresent(stopped -> known.add("aborted: " + stopped.reason()));
        Optional.ofNullable(log.repeated().get(pull)).ifPresent(stopped -> known.add("run again after: " + stopped.reason()));
        log.startOf(pull).ifPresent(start -> known.add("started " + MINUTE.format(start)));
        value.ifPresent(known::add);
        Optional.ofNullable(log.excluded().get(pull)).ifPresent(out -> known.add("left out: " + out.reason()));
        log.gatesOverridden().getOrDefault(pull, Map.of())
                .forEach((condition, reason) -> known.add(condition.words() + " overridden: " + reason));
        if (known.isEmpty()) {
            known.add(isPassed ? "not run, and the day went on without it" : "not run yet");
        }
        return pull + ": " + String.join("; ", known) + ".";
    }

    /** {@return that the day is done, and which exports the finding still waits for} */
    public static String waitingFor(List<PullId> missing) {
        return missing.isEmpty() ? "The finding stands on the page Finding."
                : "The finding waits for the export of " + listed(missing) + ".";
    }

    /** {@return how far a day is that may not be judged yet, in a few words} */
    public static String notYetOver(DayProgress progress) {
        return progress.in() == 0 ? "No pull has come in yet" : "The day is under way: " + progress.in() + " of " + progress.counted()
                + " counted pulls are in";
    }

    /** {@return why nothing is told of it, and when something will be} */
    public static List<String> whyNotYetOver(Plan plan, DayProgress progress) {
        String when = whenNext(plan, progress);
        return List.of("Whoever sees a verdict while the day is run can stop when luck is good: an unchanged car then passes for a gain "
                + "more often than the plan allows. Values, scatter and the return to A stand on the page Run.",
                when + (progress.missing().isEmpty() ? "" : " Missing until then: " + some(progress.missing()) + "."));
    }

    /** {@return why a plan with looks is not judged where its day is} */
    public static String betweenLooks(Plan plan, DayProgress progress) {
        String when = whyNotYetOver(plan, progress).get(1);
        return notYetOver(progress).toLowerCase(Locale.ROOT) + ", and a plan with looks is judged at those and at the end alone: n"
                + when.substring(1, when.length() - 1);
    }

    /** {@return why there is no verdict, or that there may be one now} */
    public static String noVerdict(Plan plan, DayProgress progress) {
        String last = plan.sequence().installs().skip(Math.max(0, progress.reached() - 1L)).findFirst().orElseThrow().label();
        return progress.isLookDue() ? "The look planned after " + last + " can be taken now; no verdict before it."
                : whenNext(plan, progress);
    }

    private static String whenNext(Plan plan, DayProgress progress) {
        return noVerdict(plan, progress.nextLook().map(after -> Math.min(progress.reached(), after - 1)).orElse(progress.installs() - 1));
    }

    private static String noVerdict(Plan plan, int installsDone) {
        Optional<Integer> look = plan.looks().flatMap(looks -> looks.afterInstalls().stream().filter(after -> after > installsDone)
                .findFirst());
        int at = look.orElse((int) plan.sequence().installs().count());
        String label = plan.sequence().installs().skip(at - 1L).findFirst().orElseThrow().label();
        return "No verdict before " + (look.isPresent() && at < plan.sequence().installs().count() ? "the planned look" : "the end")
                + ", after " + label + ".";
    }
}

package fairpull.report.wording;

import fairpull.domain.day.DayEvent;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Install;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Part;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Sequence;
import fairpull.domain.pull.PullId;
import fairpull.domain.pull.Seal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a run sheet says beside its fields. */
public final class SheetWords {
    private static final double SECONDS_A_MINUTE = 60;

    private SheetWords() {
    }

    /** {@return the seal's code, or that there is none} */
    public static String code(Optional<Seal> seal) {
        return seal.map(one -> "SEAL " + one.code()).orElse("NOT SEALED");
    }

    /** {@return when it was sealed, or what is missing without a seal} */
    public static String sealed(Optional<Seal> seal) {
        return seal.map(one -> "sealed " + Times.full(one.at())).orElse("the plan can still be changed without a trace");
    }

    /** {@return what to do with the seal before the day} */
    public static String lodge(Optional<Seal> seal) {
        return seal.isPresent()
                ? "lodge the code with a third party before the day."
                : "seal the plan, print this sheet again, and lodge the code with a third party before the day.";
    }

    /** {@return the deciding measure} */
    public static String deciding(Plan plan) {
        Measure deciding = plan.question().deciding();
        return deciding.name() + " (" + PlanWords.definition(deciding) + "), in " + deciding.unit().symbol() + ", "
                + PlanWords.correction(deciding.correction()) + "; " + PlanWords.better(deciding.better());
    }

    /** {@return the worthwhile gain} */
    public static String worthwhile(Plan plan) {
        Question question = plan.question();
        Measure deciding = question.deciding();
        if (question.worthwhileGainSi().isEmpty()) {
            return "none named";
        }
        double gain = question.worthwhileGainSi().getAsDouble();
        String figure = Numbers.given(deciding.unit().differenceFromSi(gain), deciding.unit().symbol());
        return question.expectedLevelSi().isEmpty() ? figure
                : figure + " (" + Numbers.brief(100 * gain / question.expectedLevelSi().getAsDouble(), "%") + ")";
    }

    /** {@return rig, order and pace} */
    public static String run(Plan plan) {
        Sequence sequence = plan.sequence();
        int counted = sequence.installs().mapToInt(Install::countedPulls).sum();
        int warmUps = sequence.installs().mapToInt(Install::warmUpPulls).sum();
        String gear = plan.rig().gear().isBlank() ? "" : ", gear " + plan.rig().gear();
        return plan.rig().name() + " (" + PlanWords.kind(plan.rig().kind()) + ")" + gear + ". Order " + sequence.letters() + ", "
                + Numbers.count(counted, "counted pull") + " and " + Numbers.count(warmUps, "warm-up") + "; "
                + "a pull every " + length(sequence.pullIntervalS()) + "." + looks(plan);
    }

    private static String looks(Plan plan) {
        List<String> labels = plan.sequence().installs().map(Install::label).toList();
        return plan.looks().map(looks -> " Look at the data only after " + looks.afterInstalls().stream()
                .map(after -> labels.get(after - 1)).collect(Collectors.joining(", ")) + ".").orElse("");
    }

    /** {@return what is done before the pulls of an install, for how long} */
    public static String before(Optional<Install> previous, Install next, Sequence sequence) {
        if (previous.isEmpty()) {
            return "set-up " + length(sequence.setUpS()) + ": fit " + next.part();
        }
        Part off = previous.get().part();
        String swap = off == next.part() ? "refit " + length(sequence.swapS()) + ": " + off + " off and on again"
                : "swap " + length(sequence.swapS()) + ": " + off + " off, " + next.part() + " on";
        return swap + (next.unstrapped() ? ", strapped down anew" : ", straps untouched");
    }

    /** {@return a break of the day} */
    public static String pause(DayEvent event) {
        return "break, " + length(event.endS() - event.startS());
    }

    /** {@return from when to when a day is planned, and how far beyond its end} */
    public static String span(String begin, String end, double lateMinutes) {
        return begin + " to " + end + (lateMinutes > 0 ? ", " + Numbers.duration(lateMinutes) + " beyond the end of the day" : "");
    }

    private static String length(double seconds) {
        double minutes = seconds / SECONDS_A_MINUTE;
        return minutes == Math.rint(minutes) ? Numbers.duration(minutes) : Numbers.given(minutes, "min");
    }

    /** {@return what is to be done with the gates} */
    public static String gates(int gates, PullId reference) {
        return gates == 0 ? "None in the plan: write down the readings all the same."
                : "All must hold before a pull starts. If one does not, wait; if you go on, write the reason. " + reference
                + " is the reference pull.";
    }

    /** {@return the amendments so far, or that there are none} */
    public static String amendments(int amendments, boolean sealed) {
        return !sealed ? "not sealed, so changes left no trace."
                : amendments == 0 ? "none so far." : Numbers.count(amendments, "amendment") + " since the seal:";
    }

    /** {@return the name of a condition over a narrow column} */
    public static String brief(Condition condition) {
        return switch (condition) {
            case INTAKE_AIR -> "air";
            case COOLANT -> "coolant";
            case OIL -> "oil";
            case GEARBOX -> "gearbox";
            case BAROMETER -> "barometer";
            case HUMIDITY -> "humidity";
            case TYRE_PRESSURE -> "tyres";
        };
    }
}

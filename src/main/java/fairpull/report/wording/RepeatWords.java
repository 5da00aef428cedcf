package fairpull.report.wording;

import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.Repeat.Days;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Plan;
import fairpull.domain.plan.Question;
import fairpull.domain.plan.Scatter;
import java.util.ArrayList;
import java.util.List;

/** The fair repeat of a published comparison: its order, pulls and hours, and what it finds. */
public final class RepeatWords {
    private static final double SECONDS_A_MINUTE = 60;
    private static final double PERCENT = 100;
    /** A day that is shorter by less is not worth a record. */
    private static final double WORTH_NAMING = 0.05;

    private RepeatWords() {
    }

    /** {@return what it would take, in a few words} */
    public static String heading(Repeat repeat) {
        String gain = gain(repeat);
        return switch (repeat.outcome()) {
            case FOUND -> "A fair repeat that can see " + gain + " takes " + Numbers.duration(repeat.best().orElseThrow().minutes())
                    + (repeat.best().orElseThrow().days() == 1 ? "" : " over " + repeat.best().orElseThrow().days() + " days");
            case OUT_OF_REACH -> "No fair repeat within " + Repeat.MOST_DAYS + " days can see " + gain;
            case NO_SCATTER -> "A fair repeat cannot be sized: no scatter is known";
            case NO_GAIN -> "There is no gain to look for";
        };
    }

    /** {@return the sentences under the heading} */
    public static String paragraph(Repeat repeat) {
        return switch (repeat.outcome()) {
            case FOUND -> "The shortest counterbalanced order that finds it, in A at both ends. It is judged by its own data alone: "
                    + "nobody has to trust the record of a rig.";
            case OUT_OF_REACH -> "Within " + Repeat.HOURS_A_DAY + " hours a day and " + Repeat.MOST_DAYS + " days, judged by its own "
                    + "data, none "
                    + "of up to ten installs a day is precise enough at the scatter assumed. What would help stands below.";
            case NO_SCATTER -> "There is no figure for how “" + repeat.figure().name() + "” scatters where nothing is changed. Measure an "
                    + "unchanged state several times first; `fairpull new` then plans the test by that.";
            case NO_GAIN -> "The published figures show none, and none is claimed.";
        };
    }

    /** {@return its order, pulls, hours, what it finds and what it rests on} */
    public static List<Said> all(Repeat repeat) {
        List<Said> said = new ArrayList<>();
        repeat.plan().ifPresent(plan -> repeat.best().ifPresent(days -> {
            said.add(new Said("Decides by", measure(plan)));
            said.add(new Said(isFound(repeat) ? "Sequence" : "The nearest to it", order(days)));
            said.add(new Said("Drift", "linear with the clock, modelled: a steady one then neither counts as the change, which the order "
                    + "sees to, nor as scatter."));
            said.add(new Said("Pulls", pulls(days)));
            said.add(new Said("Time", time(days, plan)));
            said.add(new Said("Finds", finds(repeat, days, plan.question())));
            if (days.days() > 1) {
                said.add(new Said("On a single day", "no order within " + Repeat.HOURS_A_DAY + Numbers.THIN + "h finds less than "
                        + SizeWords.detectable(repeat.oneDayFinds().orElseThrow(), unit(repeat)) + "."));
            }
            said.add(new Said("Sized by", scatter(plan)));
            said.add(new Said("With a record", recorded(repeat)));
            if (!isFound(repeat)) {
                said.add(new Said("What else would help", "less refit scatter, or more days. A gain of "
                        + SizeWords.detectable(days.detectableGain(), unit(repeat)) + " or more could be seen as it is."));
            }
        }));
        return said;
    }

    private static boolean isFound(Repeat repeat) {
        return repeat.outcome() == Repeat.Outcome.FOUND;
    }

    private static String unit(Repeat repeat) {
        return repeat.figure().before().unit().symbol();
    }

    private static String gain(Repeat repeat) {
        return Numbers.brief(repeat.gain(), unit(repeat));
    }

    private static String measure(Plan plan) {
        Correction correction = plan.question().deciding().correction();
        return plan.question().deciding().name() + " in " + plan.question().deciding().unit().symbol()
                + (correction == Correction.NONE ? ", as measured" : ", every pull corrected to " + PlanWords.standard(correction)
                + " by the air noted with it");
    }

    private static String order(Days days) {
        return spaced(days) + (days.days() == 1 ? "" : ", the same on each of " + days.days() + " days") + ": "
                + Numbers.count(days.installs(), "install") + ", the car strapped down anew for each.";
    }

    private static String pulls(Days days) {
        return days.pulls() + " counted per install after " + Numbers.count(days.warmUps(), "warm-up pull") + ", "
                + days.installs() * (days.pulls() + days.warmUps()) + " in all; every one is reported.";
    }

    private static String time(Days days, Plan plan) {
        String each = days.days() == 1 ? "" : ", " + Numbers.duration(days.minutes() / days.days()) + " a day";
        return Numbers.duration(days.minutes()) + each + ", with a pull every " + minutes(plan.sequence().pullIntervalS()) + ", "
                + minutes(plan.sequence().swapS()) + " for a swap and " + minutes(plan.sequence().setUpS()) + " to set up.";
    }

    private static String minutes(double seconds) {
        return Numbers.duration(seconds / SECONDS_A_MINUTE);
    }

    private static String finds(Repeat repeat, Days days, Question asked) {
        return "a gain of " + SizeWords.detectable(days.detectableGain(), unit(repeat)) + " with a chance of "
                + Numbers.percent(asked.powerWanted()) + " (two-sided, error rate " + Numbers.percent(asked.errorRate()) + "); "
                + gain(repeat) + " is looked for.";
    }

    private static String scatter(Plan plan) {
        Scatter pull = plan.rig().pullScatter().orElseThrow();
        Scatter refit = plan.rig().refitScatter().orElseThrow();
        return "pull scatter " + share(plan, pull) + (pull.isGuess() == refit.isGuess() ? "" : origin(pull)) + " and refit scatter "
                + share(plan, refit) + " of the level" + origin(refit) + "; the verdict does not rest on them.";
    }

    private static String share(Plan plan, Scatter scatter) {
        return Numbers.brief(PERCENT * scatter.standardDeviationSi() / plan.question().expectedLevelSi().orElseThrow(), "%");
    }

    private static String origin(Scatter scatter) {
        return scatter.isGuess() ? " (a starting guess: engineering judgement with no source)" : " (as stated)";
    }

    private static String recorded(Repeat repeat) {
        String record = "were this refit scatter known from a record with " + Numbers.withDegreesOfFreedom(Repeat.RECORD_DEGREES_OF_FREEDOM)
                + ", ";
        if (repeat.recorded().isEmpty()) {
            return record + "it would be out of reach all the same.";
        }
        Days days = repeat.recorded().get();
        if (isFound(repeat) && days.minutes() > repeat.best().orElseThrow().minutes() * (1 - WORTH_NAMING)) {
            return record + "it would hardly be shorter.";
        }
        return record + spaced(days) + (days.days() == 1 ? "" : " on each of " + days.days() + " days") + " with "
                + Numbers.count(days.pulls(), "counted pull") + " per install would do, in " + Numbers.duration(days.minutes()) + ".";
    }

    private static String spaced(Days days) {
        return String.join("/", days.order().split("\\|")[0].split(""));
    }
}

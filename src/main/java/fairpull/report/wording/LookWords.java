package fairpull.report.wording;

import fairpull.domain.Remedy.Surface;
import fairpull.domain.Remedy;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeLooks;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** What planned looks at the data are, cost and mean for a finding. */
public final class LookWords {
    private LookWords() {
    }

    /** {@return the sentence of a notice about looks} */
    static String sentence(Notice notice, Surface surface) {
        return switch (notice.code()) {
            case LOOK_APPLIED -> "Look " + whole(notice, 0) + " of " + whole(notice, 1) + " planned: judged at an error rate of "
                    + level(notice.figures().get(2)) + ", so that all looks together keep to " + Numbers.percent(notice.figures().get(3))
                    + ".";
            case LOOK_NOT_PLANNED -> "No look is planned after " + Numbers.count(Math.round(notice.figures().get(0)), "install")
                    + "; the strictest planned level, " + level(notice.figures().get(1))
                    + ", was used, but the error rate is no longer kept; decide only at the planned looks.";
            case LOOK_NOT_LOGGED -> "Look " + whole(notice, 0) + " is not in the log; "
                    + new Remedy("write it down with `fairpull judge TEST --look`", "have it written down").on(surface)
                    + ", for a look that nobody knows of cannot be counted.";
            case LOOKED_TOO_OFTEN -> "The log names " + Numbers.count(Math.round(notice.figures().get(0)), "look") + ", "
                    + whole(notice, 2) + " of them not planned (planned: " + whole(notice, 1)
                    + "); more looks than planned announce more changes that are none, so the error rate is not kept.";
            case DAY_ENDED_EARLY -> "The day was ended before all of its pulls were run: " + String.join("; ", notice.names())
                    + "; whoever ends a day after seeing its values can end it when luck is good.";
            case DAY_NOT_OVER -> "The day is under way: " + whole(notice, 0) + " of " + whole(notice, 1)
                    + " counted pulls are in; whoever judges before the end can stop when luck is good, so that the error rate is no "
                    + "longer kept; judge at the end, or plan looks before the seal.";
            case PLAN_LOOK_TOO_EARLY -> "The look after " + whole(notice, 0) + " installs cannot be judged without a rig record, it needs "
                    + whole(notice, 1) + "; move it, or name a record with its degrees of freedom.";
            case PLAN_LOOK_DECIDES_LITTLE -> "The look after " + whole(notice, 0) + " installs has "
                    + Numbers.count(Math.round(notice.figures().get(1)), "degree") + " of freedom without a rig record, so t would "
                    + "have to be very large there and " + decides(notice)
                    + "; name a record with its degrees of freedom, or put the look later.";
            case PLAN_LOOK_APPROXIMATE -> "The look after " + whole(notice, 0) + " installs has " + Numbers.degreesOfFreedom(
                    notice.figures().get(1)) + " degrees of freedom; bounds are worked out for known scatter and applied through "
                    + "p-values, which with so few keeps the error rate only nearly: "
                    + new Remedy("`fairpull prove`", "the proof of the plan").on(surface) + " shows how nearly.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about looks");
        };
    }

    /** {@return what a reader must know of the looks of a sizing} */
    public static List<String> warnings(SizeAnswer answer, Surface surface) {
        return answer.looks().map(SizeLooks::notices).orElse(List.of()).stream().map(notice -> sentence(notice, surface)).toList();
    }

    /** {@return the looks of a plan in a sentence} */
    public static String planned(Looks looks, double errorRate) {
        List<String> places = looks.afterInstalls().stream().map(String::valueOf).toList();
        return "Looked at after " + String.join(", ", places.subList(0, places.size() - 1)) + " and " + places.get(places.size() - 1)
                + " installs, an error rate of " + Numbers.percent(errorRate) + " shared among them (" + kind(looks.spending()) + ").";
    }

    /** {@return where the looks of a sizing fall and what they cost} */
    public static String cost(SizeQuestion question, SizeLooks looks) {
        List<String> sentences = new ArrayList<>();
        sentences.add(planned(question.looks().orElseThrow(), question.errorRate()));
        for (SizeLooks.Place look : looks.looks()) {
            sentences.add("After " + look.afterInstalls() + " installs (" + Numbers.chance(look.informationFraction())
                    + " of the information) the level is " + level(look.level()) + "; " + (look.chance().isPresent()
                    ? "looked at there alone, the gain is found with a chance of " + Numbers.chance(look.chance().getAsDouble()) + "."
                    : "it cannot be judged there from its own data."));
        }
        looks.inflation().ifPresent(inflation -> sentences.add("For the power wanted the looks need "
                + Numbers.percent(Math.round((inflation - 1) * 100) / 100.0)
                + " more information than one at the end. Chances, gains and needs with looks are simulated, judged as on the day."));
        return String.join(" ", sentences);
    }

    private static String decides(Notice notice) {
        if (notice.figures().size() < 3) {
            return "the look decides next to nothing";
        }
        double chance = notice.figures().get(2);
        return "the gain is found there with a chance of " + (chance < 0.01 ? "less than " : "") + Numbers.chance(Math.max(chance, 0.01));
    }

    private static String kind(Looks.Spending spending) {
        return switch (spending) {
            case OBRIEN_FLEMING -> "O’Brien–Fleming-like spending, next to nothing early";
            case POCOCK -> "Pocock-like spending, much the same at every look";
        };
    }

    /** An error rate in percent, three significant digits. */
    static String level(double level) {
        return level >= 1e-6 ? Numbers.given(new BigDecimal(level * 100).round(new MathContext(3)).doubleValue()) + Numbers.THIN + "%"
                : "less than 0.0001" + Numbers.THIN + "%";
    }

    private static String whole(Notice notice, int place) {
        return Long.toString(Math.round(notice.figures().get(place)));
    }
}

package fairpull.report.wording;

import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.heat.HeatNotice;

/** A sentence for each notice about heat. */
public final class HeatNoticeWords {
    /** What is to be given, as each surface calls it. */
    static final Remedy AMBIENT = new Remedy("--ambient", "the ambient temperature");

    private HeatNoticeWords() {
    }

    /** {@return the sentence of a notice} */
    public static String sentence(HeatNotice notice) {
        return sentence(notice, Surface.COMMAND_LINE);
    }

    /** {@return the same for a surface} */
    public static String sentence(HeatNotice notice, Surface surface) {
        return switch (notice.code()) {
            case LOG_SHORTER_THAN_TIME_CONSTANT -> "The log lasts " + HeatNumbers.time(figure(notice, 0))
                    + ", less than the time constant of " + HeatNumbers.time(figure(notice, 1))
                    + " fitted to it: what comes after is extrapolated. Log until the temperature hardly falls.";
            case TIME_CONSTANT_LOOSE -> "A time constant is known only to lie between " + HeatNumbers.time(figure(notice, 0)) + " and "
                    + HeatNumbers.time(figure(notice, 1)) + ".";
            case LOG_CANNOT_SAY -> "A time constant is known only to lie between " + HeatNumbers.time(figure(notice, 0)) + " and "
                    + HeatNumbers.time(figure(notice, 1)) + ", not even within a factor of three: no interval and no number of warm-ups "
                    + "follows from that.";
            case AMBIENT_LOOSE -> "The ambient was fitted too, as " + HeatNumbers.celsius(figure(notice, 0)) + " with a standard error of "
                    + HeatNumbers.kelvin(figure(notice, 1)) + ", more than the tolerance. Measure it and give "
                    + AMBIENT.on(surface) + ".";
            case READINGS_FOLLOW_ONE_ANOTHER -> "Neighbouring readings err alike (correlation " + Numbers.brief(figure(notice, 0), "")
                    + "): standard errors are widened by a factor of " + Numbers.brief(figure(notice, 1), "")
                    + " for that. The curve may lack something that the car does.";
            case FAHRENHEIT_SUSPECTED -> "No reading is below " + HeatNumbers.celsius(figure(notice, 0))
                    + ". For coolant or oil that may be; if the log is in °F, "
                    + new Remedy("say so: --column temperature=NAME:F", "write it in the head of its column").on(surface) + ".";
            case RISE_TAKEN_FROM_LOG -> "What one pull adds was not given. The log’s own start, " + HeatNumbers.kelvin(figure(notice, 0))
                    + " above ambient, stands for it, which is right if the log begins right after a single pull from ambient; else give "
                    + new Remedy("--pull-rise", "it").on(surface) + ".";
            case SHARES_TAKEN_FROM_LOG -> "How a pull’s heat divides over the two time constants was read off the log’s start, which is "
                    + "right if the log begins right after a single pull. After many pulls the slow part is overstated.";
            case TYPED_NOT_FITTED -> "The time constant was typed in, not fitted: it is a starting guess until a cool-down logged on this "
                    + "car confirms it.";
            case AMBIENT_ASSUMED -> "No ambient was given; 25" + Numbers.THIN + "°C, the reference of the corrections, stands for it.";
            case NOT_HELD -> "At this interval not even " + Numbers.given(figure(notice, 0))
                    + " warm-up pulls bring every counted pull within the tolerance of the reference pull: wait longer between pulls.";
            case WARM_UPS_SERVE_THE_GATE -> "The warm-up pulls bring the counted ones within the tolerance, and that is all they do here: "
                    + "heat leaves " + percent(figure(notice, 0)) + " on B − A with them and " + percent(figure(notice, 1))
                    + " without. Against that bias another order or a longer interval helps, not more warm-ups.";
            case BIAS_LARGE -> "What heat leaves on B − A is " + HeatNumbers.share(figure(notice, 0))
                    + " of the worthwhile gain: choose another order, a longer interval or a closer gate.";
        };
    }

    private static String percent(double relative) {
        return Numbers.resolving(relative * 100, "%").with(relative * 100);
    }

    private static double figure(HeatNotice notice, int index) {
        return notice.figures().get(index);
    }
}

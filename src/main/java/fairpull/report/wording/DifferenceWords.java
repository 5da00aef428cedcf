package fairpull.report.wording;

import fairpull.domain.audit.Publication;
import fairpull.domain.unit.Unit;

/** A published difference, with as many decimals as its figures were printed with, or what they show of it in the unit of the first. */
public final class DifferenceWords {
    private DifferenceWords() {
    }

    /** {@return the gain that the printed figures show, signed} */
    public static String gain(Publication.Figure figure) {
        Unit unit = figure.before().unit();
        return numbers(figure, unit).signed(unit.differenceFromSi(figure.gainSi()));
    }

    /** {@return the same as a noun: {@code +16.5 hp of gain}, {@code 10.4 hp of loss}, or that there is none} */
    static String noun(Publication.Figure figure) {
        Unit unit = figure.before().unit();
        double gain = unit.differenceFromSi(figure.gainSi());
        if (numbers(figure, unit).printsAsZero(gain)) {
            return "no difference";
        }
        return gain > 0 ? gain(figure) + " of gain" : numbers(figure, unit).with(-gain) + " of loss";
    }

    /** To the digit of the figure that was printed the finer; in two units their difference falls between the digits of either. */
    private static Numbers numbers(Publication.Figure figure, Unit unit) {
        double digit = 2 * unit.differenceFromSi(Math.min(figure.before().halfDigitSi(), figure.after().halfDigitSi()));
        return Numbers.resolving(10 * digit * 1.0001, unit.symbol());
    }
}

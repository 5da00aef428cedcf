package fairpull.domain.audit;

import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Unit;
import java.util.Optional;

/**
 * A figure as it was printed: its digits say how it was rounded.
 *
 * @param value the number, in its unit
 * @param decimals decimals printed; 214 hp has none and may have been anything from 213.5 to 214.5
 * @param unit the unit printed with it
 */
public record Printed(double value, int decimals, Unit unit) {
    /** {@return the figure in a text such as {@code 214.3 hp}; empty where the text holds no number} */
    public static Optional<Printed> parse(String text) {
        return Amount.parse(text).filter(amount -> Double.isFinite(amount.value()))
                .map(amount -> new Printed(amount.value(), decimals(text), amount.unit()));
    }

    private static int decimals(String text) {
        String number = text.strip().split("[^0-9.+−-]", 2)[0];
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    /** {@return the figure in SI} */
    public double si() {
        return unit.toSi(value);
    }

    /** {@return half a unit of the last printed digit, in SI: how far rounding may have moved it} */
    public double halfDigitSi() {
        return unit.differenceToSi(0.5 * Math.pow(10, -decimals));
    }
}

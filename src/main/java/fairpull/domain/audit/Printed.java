package fairpull.domain.audit;

import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure as it was printed: its digits say how it was rounded.
 *
 * @param value the number, in its unit
 * @param decimals decimals printed; 214 hp has none and may have been anything from 213.5 to 214.5
 * @param unit the unit printed with it
 */
public record Printed(double value, int decimals, Unit unit) {
    private static final int MOST_DECIMALS = 12;
    private static final double LARGEST = 1e12;
    private static final Pattern UNIT = Pattern.compile("[\\p{L}°%µ‰].*|1?|1/.*");
    private static final Pattern NUMBER = Pattern.compile("\\s*[-+−]?\\d*(?:\\.(?<behind>\\d*))?(?:[eE](?<power>[-+]?\\d{1,3}))?");

    public Printed {
        Objects.requireNonNull(unit, "unit");
        if (!(Math.abs(value) <= LARGEST) || decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("a printed figure has up to 12 digits before the point and " + MOST_DECIMALS
                    + " behind it, was " + value + " with " + decimals + " decimals");
        }
    }

    /**
     * {@return the figure in a text such as {@code 214.3 hp}; empty where the text holds no number, one of more than 12 decimals, or a unit
     * that begins like a number}
     */
    public static Optional<Printed> parse(String text) {
        return Amount.parse(text).filter(amount -> Math.abs(amount.value()) <= LARGEST && decimals(text) <= MOST_DECIMALS)
                .filter(amount -> UNIT.matcher(amount.unit().symbol()).matches())
                .map(amount -> new Printed(amount.value(), decimals(text), amount.unit()));
    }

    private static int decimals(String text) {
        Matcher number = NUMBER.matcher(text);
        if (!number.lookingAt()) {
            return 0;
        }
        int behind = number.group("behind") == null ? 0 : number.group("behind").length();
        int power = number.group("power") == null ? 0 : Integer.parseInt(number.group("power"));
        return Math.max(0, behind - power);
    }

    /** {@return the figure as it was printed, such as {@code 214.3 hp}; it reads back as the same} */
    public String words() {
        return unit.equals(Units.ONE) ? number() : number() + " " + unit.symbol();
    }

    /** {@return the number alone, with the decimals that were printed} */
    public String number() {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
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

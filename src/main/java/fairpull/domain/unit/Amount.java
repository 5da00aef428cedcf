package fairpull.domain.unit;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number typed together with its unit, such as {@code 4 hp}, {@code 30C} or {@code 1.5%}.
 *
 * @param value the number as typed
 * @param unit the unit typed with it; {@link Units#ONE} when there was none
 */
public record Amount(double value, Unit unit) {
    /** The spaces that are printed between a number and its unit, so that what was printed can be typed. */
    private static final String UNBROKEN = "[\u00a0\u202f]";
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("\\s*([-+−]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)\\s*(.*?)\\s*");

    /** What is no unit, but more of the number: a decimal comma, digits in threes. */
    private static final Pattern GOES_ON = Pattern.compile("[\\d.,]");

    /** {@return the amount in a text, or empty where the text is not a number, nothing or a unit behind it; 3,3 hp is none} */
    public static Optional<Amount> parse(String text) {
        return withWhatFollows(text).filter(amount -> amount.unit().quantity() != Quantity.OTHER
                || !GOES_ON.matcher(amount.unit().symbol()).lookingAt());
    }

    /** {@return the amount in a text, whatever follows its number as the unit; empty where the text does not begin with a number} */
    public static Optional<Amount> withWhatFollows(String text) {
        Matcher parts = NUMBER_AND_UNIT.matcher(text.replaceAll(UNBROKEN, " "));
        if (!parts.matches()) {
            return Optional.empty();
        }
        double number = Double.parseDouble(parts.group(1).replace('−', '-'));
        String unit = parts.group(2);
        return Optional.of(new Amount(number, unit.isEmpty() ? Units.ONE : Units.findOrAsTyped(unit)));
    }

    /** {@return number and unit as they are printed, such as {@code 3 hp}} */
    public String words() {
        String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return isBare() ? number : number + " " + unit.symbol();
    }

    /** {@return the amount in SI, as a level} */
    public double si() {
        return unit.toSi(value);
    }

    /** {@return the amount in SI, as a difference} */
    public double differenceSi() {
        return unit.differenceToSi(value);
    }

    /** {@return whether no unit was typed} */
    public boolean isBare() {
        return unit.equals(Units.ONE);
    }
}

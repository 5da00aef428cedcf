package fairpull.domain.audit;

import fairpull.domain.unit.Amount;
import fairpull.domain.unit.DecimalComma;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Quantity;
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
    /** No figure of a test is that large in any unit in which it is printed. */
    private static final double LARGEST = 1e9;
    /** How a unit begins that is not known here, and how long it may be. */
    private static final Pattern UNIT = Pattern.compile("[\\p{L}°%‰][^\\p{Cc}\\p{Cs}\u202a-\u202e\u2066-\u2069]{0,39}");
    private static final Pattern NUMBER = Pattern.compile("\\s*[-+−]?\\d*(?:\\.(?<behind>\\d*))?(?:[eE](?<power>[-+]?\\d{1,3}))?");

    public Printed {
        Objects.requireNonNull(unit, "unit");
        if (!(Math.abs(value) <= LARGEST) || decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("a printed figure lies between −10⁹ and 10⁹ and has up to " + MOST_DECIMALS
                    + " decimals, was " + value + " with " + decimals);
        }
    }

    /**
     * Reads a figure such as {@code 214.3 hp}.
     *
     * @return the figure; empty where the text does not begin with a number
     * @throws IllegalArgumentException in words for people, if what follows the number is no unit, or the number is none that is printed
     */
    public static Optional<Printed> parse(String text) {
        Optional<Amount> amount = Amount.withWhatFollows(text);
        amount.map(Amount::unit).filter(unit -> !isUnit(unit)).ifPresent(unit -> {
            throw new IllegalArgumentException(DecimalComma.in(text).orElseGet(() -> "“" + text.strip() + "” has “" + unit.symbol()
                    + "” where its unit belongs; write all digits together, then the unit, such as 214.3 hp"));
        });
        return amount.map(known -> new Printed(known.value(), decimals(text), known.unit()));
    }

    private static boolean isUnit(Unit unit) {
        return unit.quantity() != Quantity.OTHER || UNIT.matcher(unit.symbol()).matches();
    }

    /** {@return whether another figure is of the same quantity; what is not known here, in the same unit} */
    public boolean isLike(Printed other) {
        return unit.quantity() == other.unit().quantity() && (unit.quantity() != Quantity.OTHER || unit.equals(other.unit()));
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

    /** {@return how far it lies above another figure of its quantity, in its own unit: exact in what was printed where both are in one} */
    public double above(Printed other) {
        return unit.equals(other.unit()) ? PlainNumber.shortest(value).subtract(PlainNumber.shortest(other.value())).doubleValue()
                : PlainNumber.withoutNoise(unit.differenceFromSi(si() - other.si()));
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

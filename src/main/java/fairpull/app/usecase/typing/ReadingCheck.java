package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Can air read so? A reading that cannot be is refused, with the unit in which it could. */
public final class ReadingCheck {
    /** Warmer air is no air that an engine is tested in; common practice, no source. */
    private static final double HOTTEST = Units.CELSIUS.toSi(60);
    private static final double COLDEST = Units.CELSIUS.toSi(-50);
    private static final double USUALLY_COLDEST = Units.CELSIUS.toSi(-20);
    private static final double USUALLY_HOTTEST = Units.CELSIUS.toSi(45);
    /** Between the thinnest air that people live in and the highest pressure on record, 1085 hPa; from memory. */
    private static final double LOWEST_PRESSURE = 50_000;
    private static final double HIGHEST_PRESSURE = 110_000;
    private static final List<Unit> PRESSURES = List.of(Units.HECTOPASCAL, Units.KILOPASCAL, Units.INCH_OF_MERCURY,
            Units.POUND_PER_SQUARE_INCH, Units.BAR, Units.PASCAL);
    private static final List<Unit> TEMPERATURES = List.of(Units.CELSIUS, Units.FAHRENHEIT, Units.KELVIN);

    private final Place place;

    public ReadingCheck(Place place) {
        this.place = place;
    }

    /** {@return whether air that an engine is tested in can be so warm} */
    public static boolean canBeAir(double kelvin) {
        return kelvin >= COLDEST && kelvin <= HOTTEST;
    }

    /** {@return the air temperature in K} */
    public double temperature(Amount amount) {
        double kelvin = amount.si();
        if (!canBeAir(kelvin)) {
            throw refuse(amount, "is not the temperature of air that an engine is tested in", TEMPERATURES.stream()
                    .filter(unit -> unit.toSi(amount.value()) >= USUALLY_COLDEST && unit.toSi(amount.value()) <= USUALLY_HOTTEST)
                    .findFirst(), Units.CELSIUS);
        }
        return kelvin;
    }

    /** {@return the air pressure in Pa} */
    public double pressure(Amount amount) {
        double pascal = amount.si();
        if (pascal < LOWEST_PRESSURE || pascal > HIGHEST_PRESSURE) {
            throw refuse(amount, "is not the pressure of air anywhere", PRESSURES.stream()
                    .filter(unit -> unit.toSi(amount.value()) >= LOWEST_PRESSURE && unit.toSi(amount.value()) <= HIGHEST_PRESSURE)
                    .findFirst(), Units.HECTOPASCAL);
        }
        return pascal;
    }

    /** {@return relative humidity as a share} */
    public double humidity(Amount amount) {
        if (amount.si() < 0 || amount.si() > 1) {
            Amount shifted = new Amount(Math.abs(amount.value()) / 10, amount.unit());
            throw new InputException(place, amount.words() + " relative humidity cannot be, it lies between 0 and 100 %",
                    "read the instrument again" + (amount.si() > 1 && shifted.si() <= 1 ? "; " + shifted.words()
                    + " is likely meant where a decimal point was lost" : "") + "; a dew point is given as one");
        }
        return amount.si();
    }

    /** {@return a dew point or wet bulb in K, which is never above the temperature of the air} */
    double atMost(Amount amount, String what, double temperatureK) {
        if (amount.si() > temperatureK) {
            throw new InputException(place, "the " + what + ", " + amount.words() + ", is above the temperature of the air, "
                    + celsius(temperatureK), "look whether the two were swapped or stand in different units");
        }
        return amount.si();
    }

    /** {@return height above sea level in m} */
    public double elevation(Amount amount) {
        if (amount.si() < -450 || amount.si() > 6000) {
            throw new InputException(place, "an elevation of " + amount.words() + " is nowhere that cars are tested",
                    "give the height above sea level, such as 300m or 1000ft");
        }
        return amount.si();
    }

    private InputException refuse(Amount amount, String problem, Optional<Unit> likely, Unit shown) {
        String remedy = likely.filter(unit -> !unit.equals(amount.unit())).map(unit -> new Amount(amount.value(), unit).words()
                + (unit.equals(shown) ? "" : String.format(Locale.ROOT, " (%.1f %s)", shown.fromSi(unit.toSi(amount.value())),
                shown.symbol())) + " is likely meant").orElse("give it with the unit that the instrument shows");
        return new InputException(place, amount.words() + " " + problem, remedy);
    }

    private static String celsius(double kelvin) {
        return String.format(Locale.ROOT, "%.1f °C", Units.CELSIUS.fromSi(kelvin));
    }

    /** {@return an amount of a quantity out of what was typed for an option} */
    public static Amount typed(String option, String text, Quantity quantity, String example) {
        return Amount.parse(text).filter(amount -> amount.unit().quantity() == quantity && (quantity == Quantity.FRACTION
                || !amount.isBare())).orElseThrow(() -> new UsageException(option, "expected a " + quantity.words()
                + " with its unit, such as " + example + "; found “" + text + "”"));
    }

    /** {@return a share typed in percent; a bare number would leave open whether percent are meant} */
    static Amount percent(String option, String text, String example) {
        return Amount.parse(text).filter(amount -> amount.unit().equals(Units.PERCENT)).orElseThrow(() -> new UsageException(option,
                "expected percent, such as " + example + "; found “" + text + "”"));
    }
}

package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.engine.air.Air;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Readings of the air as they are typed, each with its unit.
 *
 * @param temperature of the air that the engine breathes; null where it was not typed
 * @param pressure barometer; null where it was not typed
 * @param humidity relative humidity in percent; at most one of this and the next two
 * @param dewPoint dew point
 * @param wetBulb wet bulb
 * @param seaLevel whether the barometer was reduced to sea level
 * @param elevation height above sea level
 */
public record TypedAir(String temperature, String pressure, Optional<String> humidity, Optional<String> dewPoint, Optional<String> wetBulb,
        boolean seaLevel, Optional<String> elevation) {

    /** {@return what has to be given too, as it could be typed} */
    public List<String> missing(boolean needsHumidity) {
        List<String> missing = new ArrayList<>();
        if (temperature == null) {
            missing.add("--temperature 12C");
        }
        if (pressure == null) {
            missing.add("--pressure 1003hPa");
        }
        if (needsHumidity && humidity.isEmpty() && dewPoint.isEmpty() && wetBulb.isEmpty()) {
            missing.add("--humidity 35%");
        }
        if (seaLevel && elevation.isEmpty()) {
            missing.add("--elevation 300m");
        }
        return missing;
    }

    /** {@return the reading, checked; nothing may be {@link #missing}} */
    public AirReading reading() {
        if (Stream.of(humidity, dewPoint, wetBulb).filter(Optional::isPresent).count() > 1) {
            throw new UsageException("--humidity", "give one of --humidity, --dew-point and --wet-bulb");
        }
        ReadingCheck check = new ReadingCheck(Place.none());
        double kelvin = check.temperature(ReadingCheck.typed("--temperature", temperature, Quantity.TEMPERATURE, "12C"));
        double pascal = check.pressure(ReadingCheck.typed("--pressure", pressure, Quantity.PRESSURE, "1003hPa"));
        OptionalDouble height = elevation.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(check.elevation(
                ReadingCheck.typed("--elevation", elevation.get(), Quantity.LENGTH, "300m")));
        return checked(Place.none(), new AirReading(kelvin,
                new Barometer(seaLevel ? Barometer.Kind.SEA_LEVEL : Barometer.Kind.STATION, pascal, height), moisture(check, kelvin)));
    }

    /**
     * {@return three readings in any order, told apart by their units, such as {@code "24C 1003hPa 45%"}}; the barometer is the one of this
     * air, so a pressure reduced to sea level is one there too, and a second temperature is the dew point or wet bulb that this air has.
     */
    public AirReading first(String text) {
        List<String> temperatures = new ArrayList<>();
        List<String> pressures = new ArrayList<>();
        List<String> percents = new ArrayList<>();
        for (String word : text.strip().split("[\\s,;]+")) {
            switch (Amount.parse(word).map(amount -> amount.unit().quantity()).orElse(Quantity.OTHER)) {
                case TEMPERATURE -> temperatures.add(word);
                case PRESSURE -> pressures.add(word);
                case FRACTION -> percents.add(word);
                default -> throw notFirst(text);
            }
        }
        boolean moistByThermometer = temperatures.size() == 2 && percents.isEmpty() && (dewPoint.isPresent() || wetBulb.isPresent());
        if (pressures.size() != 1 || !(moistByThermometer || temperatures.size() == 1 && percents.size() == 1)) {
            throw notFirst(text);
        }
        Optional<String> second = temperatures.stream().skip(1).findFirst();
        return new TypedAir(temperatures.get(0), pressures.get(0), percents.stream().findFirst(),
                second.filter(any -> dewPoint.isPresent()), second.filter(any -> dewPoint.isEmpty()), seaLevel, elevation).reading();
    }

    private static UsageException notFirst(String text) {
        return new UsageException("--first", new Remedy("expected temperature, pressure and humidity, such as \"24C 1003hPa 45%\" "
                + "(a second temperature where --dew-point or --wet-bulb is given); found “" + text + "”",
                "expected temperature, pressure and humidity, such as 24C 1003hPa 45%; found “" + text + "”"));
    }

    private Humidity moisture(ReadingCheck check, double kelvin) {
        if (humidity.isPresent()) {
            return new Humidity.Relative(check.humidity(ReadingCheck.percent("--humidity", humidity.get(), "35%")));
        }
        if (dewPoint.isPresent()) {
            Amount amount = ReadingCheck.typed("--dew-point", dewPoint.get(), Quantity.TEMPERATURE, "9C");
            return dewPoint(check, amount, kelvin);
        }
        if (wetBulb.isPresent()) {
            return wetBulb(check, ReadingCheck.typed("--wet-bulb", wetBulb.get(), Quantity.TEMPERATURE, "15C"), kelvin);
        }
        return new Humidity.NotRead();
    }

    /** {@return a dew point, checked} */
    public static Humidity dewPoint(ReadingCheck check, Amount amount, double kelvin) {
        return new Humidity.DewPoint(check.atMost(amount, "dew point", kelvin));
    }

    /** {@return a wet bulb, checked} */
    public static Humidity wetBulb(ReadingCheck check, Amount amount, double kelvin) {
        return new Humidity.WetBulb(check.atMost(amount, "wet bulb", kelvin));
    }

    /** {@return the same reading; one that no air could give is refused} */
    public static AirReading checked(Place place, AirReading reading) {
        if (reading.humidity() instanceof Humidity.WetBulb wet && wet.temperatureK() <= 273.15) {
            throw new InputException(place, "a wet bulb at or below freezing cannot be relied on",
                    "give the relative humidity or the dew point");
        }
        if (Air.canBe(reading)) {
            return reading;
        }
        throw new InputException(place, "no air could be so dry as these two thermometers say",
                "look at the wet bulb: is its sleeve wet and does air move over it?");
    }
}

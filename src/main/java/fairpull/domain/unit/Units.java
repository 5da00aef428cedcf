package fairpull.domain.unit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Every unit the program reads or prints.
 *
 * <p>Factors are exact by definition: pound 0.45359237 kg, foot 0.3048 m, inch 0.0254 m, standard gravity 9.80665 m/s²
 * (international yard and pound agreement, 1959; SI brochure), hence hp = 550 lbf·ft/s and PS = 75 kgf·m/s.
 * Inch of mercury is the conventional one at 0 °C, 3386.389 Pa (NIST SP 811, appendix B).
 */
public final class Units {
    private static final double POUND_FORCE = 0.45359237 * 9.80665;
    private static final Map<String, Unit> BY_NAME = new LinkedHashMap<>();
    private static final List<Unit> ALL = new ArrayList<>();

    public static final Unit RPM = add(Quantity.ENGINE_SPEED, "rpm", Math.PI / 30, "1/min", "rev/min", "min-1", "u/min");
    public static final Unit THOUSAND_RPM = add(Quantity.ENGINE_SPEED, "rpm×1000", 1000 * Math.PI / 30, "krpm", "rpm*1000", "1000rpm");
    public static final Unit RAD_PER_S = add(Quantity.ENGINE_SPEED, "rad/s", 1);
    public static final Unit WATT = add(Quantity.POWER, "W", 1, "watt");
    public static final Unit KILOWATT = add(Quantity.POWER, "kW", 1000);
    public static final Unit HORSEPOWER = add(Quantity.POWER, "hp", 550 * POUND_FORCE * 0.3048, "bhp", "whp", "hp(i)");
    public static final Unit PFERDESTAERKE = add(Quantity.POWER, "PS", 75 * 9.80665, "cv", "hp(m)");
    public static final Unit NEWTON_METRE = add(Quantity.TORQUE, "N·m", 1, "nm", "n*m", "n-m", "newton metre");
    public static final Unit POUND_FOOT =
            add(Quantity.TORQUE, "lbf·ft", POUND_FORCE * 0.3048, "lb-ft", "lbft", "ft-lb", "ftlb", "ft-lbs", "lb·ft", "lbf-ft", "ft·lbf");
    public static final Unit KILOGRAM_FORCE_METRE = add(Quantity.TORQUE, "kgf·m", 9.80665, "kgfm", "kgf-m", "kgf*m", "kgf m", "m·kgf",
            "mkgf", "kg·m", "kgm", "kg-m", "kg*m", "mkg", "m-kg", "m·kg");
    public static final Unit METRE_PER_S = add(Quantity.SPEED, "m/s", 1);
    public static final Unit KM_PER_HOUR = add(Quantity.SPEED, "km/h", 1 / 3.6, "kph", "kmh", "km/hr");
    public static final Unit MILE_PER_HOUR = add(Quantity.SPEED, "mph", 0.44704, "mi/h");
    public static final Unit SECOND = add(Quantity.TIME, "s", 1, "sec", "second", "seconds");
    public static final Unit MILLISECOND = add(Quantity.TIME, "ms", 0.001);
    public static final Unit MINUTE = add(Quantity.TIME, "min", 60, "minutes");
    public static final Unit HOUR = add(Quantity.TIME, "h", 3600, "hour", "hours");
    public static final Unit KELVIN = add(Quantity.TEMPERATURE, "K", 1, 0);
    public static final Unit CELSIUS = add(Quantity.TEMPERATURE, "°C", 1, 273.15, "c", "degc", "deg c");
    public static final Unit FAHRENHEIT = add(Quantity.TEMPERATURE, "°F", 5.0 / 9, 459.67, "f", "degf", "deg f");
    public static final Unit PASCAL = add(Quantity.PRESSURE, "Pa", 1);
    public static final Unit HECTOPASCAL = add(Quantity.PRESSURE, "hPa", 100);
    public static final Unit KILOPASCAL = add(Quantity.PRESSURE, "kPa", 1000);
    public static final Unit BAR = add(Quantity.PRESSURE, "bar", 1e5);
    public static final Unit MILLIBAR = add(Quantity.PRESSURE, "mbar", 100);
    public static final Unit INCH_OF_MERCURY = add(Quantity.PRESSURE, "inHg", 3386.389, "in hg");
    public static final Unit POUND_PER_SQUARE_INCH = add(Quantity.PRESSURE, "psi", POUND_FORCE / (0.0254 * 0.0254));
    public static final Unit ONE = add(Quantity.FRACTION, "1", 1);
    public static final Unit PERCENT = add(Quantity.FRACTION, "%", 0.01, "percent");
    public static final Unit NEWTON = add(Quantity.FORCE, "N", 1);
    public static final Unit POUND_OF_FORCE = add(Quantity.FORCE, "lbf", POUND_FORCE);
    public static final Unit GRAM_OF_FORCE = add(Quantity.FORCE, "gf", 0.00980665);
    public static final Unit METRE = add(Quantity.LENGTH, "m", 1);
    public static final Unit MILLIMETRE = add(Quantity.LENGTH, "mm", 0.001);
    public static final Unit FOOT = add(Quantity.LENGTH, "ft", 0.3048);
    public static final Unit KILOGRAM = add(Quantity.MASS, "kg", 1);
    public static final Unit POUND = add(Quantity.MASS, "lb", 0.45359237, "lbs");
    public static final Unit KILOGRAM_SQUARE_METRE = add(Quantity.MOMENT_OF_INERTIA, "kg·m²", 1, "kg·m2", "kgm2", "kgm²", "kg*m2");
    public static final Unit POUND_SQUARE_FOOT =
            add(Quantity.MOMENT_OF_INERTIA, "lb·ft²", 0.45359237 * 0.3048 * 0.3048, "lb·ft2", "lbft2");
    public static final Unit KILOGRAM_PER_S = add(Quantity.MASS_FLOW, "kg/s", 1);
    public static final Unit GRAM_PER_S = add(Quantity.MASS_FLOW, "g/s", 0.001);
    public static final Unit KILOGRAM_PER_HOUR = add(Quantity.MASS_FLOW, "kg/h", 1.0 / 3600);
    public static final Unit CUBIC_METRE = add(Quantity.VOLUME, "m³", 1, "m3");
    public static final Unit LITRE = add(Quantity.VOLUME, "L", 0.001, "litre", "litres", "liter", "liters");
    public static final Unit CUBIC_CENTIMETRE = add(Quantity.VOLUME, "cm³", 1e-6, "cm3", "cc");
    public static final Unit VOLT = add(Quantity.VOLTAGE, "V", 1);
    public static final Unit AMPERE = add(Quantity.CURRENT, "A", 1);

    private Units() {
    }

    /** {@return the unit of that symbol or name, in any case of letters unless that would be ambiguous} */
    public static Optional<Unit> find(String name) {
        String trimmed = name.strip();
        Unit exact = BY_NAME.get(trimmed);
        return Optional.ofNullable(exact != null ? exact : BY_NAME.get(folded(trimmed)));
    }

    /** {@return the unit of that name, or one of {@link Quantity#OTHER} kept as typed} */
    public static Unit findOrAsTyped(String name) {
        return find(name).orElseGet(() -> Unit.asTyped(name.strip()));
    }

    /** {@return the units of a quantity, the SI one among them} */
    public static List<Unit> of(Quantity quantity) {
        return ALL.stream().filter(unit -> unit.quantity() == quantity).toList();
    }

    private static Unit add(Quantity quantity, String symbol, double factor, String... names) {
        return add(quantity, symbol, factor, 0, names);
    }

    private static Unit add(Quantity quantity, String symbol, double factor, double zero, String... names) {
        Unit unit = new Unit(symbol, quantity, factor, zero);
        ALL.add(unit);
        BY_NAME.put(symbol, unit);
        BY_NAME.putIfAbsent(folded(symbol), unit);
        for (String name : names) {
            BY_NAME.putIfAbsent(folded(name), unit);
        }
        return unit;
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT).replace('\u22c5', '·').replace("°", "");
    }
}

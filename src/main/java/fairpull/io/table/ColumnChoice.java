package fairpull.io.table;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A column named by whoever imports, against the guess.
 *
 * @param column its header, with or without the unit, or its number counted from 1; empty where no column is to be read as the quantity
 * @param unit the unit of its numbers, where that is said
 */
public record ColumnChoice(Optional<String> column, Optional<Unit> unit) {
    private static final String NONE = "none";

    public ColumnChoice {
        Objects.requireNonNull(unit, "unit");
        if (column.filter(String::isBlank).isPresent()) {
            throw new IllegalArgumentException("a column is chosen by its header or its number");
        }
    }

    /**
     * Reads an option such as {@code power=Power:hp}, {@code torque=4} or {@code engine-speed=Motor Speed (RPM)}; {@code power=none} reads
     * no column as power, and {@code power="none"} one that is called so.
     *
     * @return the quantity and the choice; empty if the option has another form
     */
    public static Optional<Map.Entry<Quantity, ColumnChoice>> parse(String option) {
        int equals = option.indexOf('=');
        if (equals < 0 || option.substring(equals + 1).isBlank()) {
            return Optional.empty();
        }
        String text = option.substring(equals + 1).strip();
        if (text.equalsIgnoreCase(NONE)) {
            return quantity(option.substring(0, equals)).map(quantity -> Map.entry(quantity, new ColumnChoice(Optional.empty(),
                    Optional.empty())));
        }
        int colon = text.lastIndexOf(':');
        Optional<Unit> unit = colon > 0 ? UnitText.find(text.substring(colon + 1)) : Optional.empty();
        String column = unit.isPresent() ? text.substring(0, colon) : text;
        return quantity(option.substring(0, equals))
                .map(quantity -> Map.entry(quantity, new ColumnChoice(Optional.of(unquoted(column)), unit)));
    }

    /** {@return the option by which no column is read as a quantity} */
    public static String none(Quantity quantity) {
        return id(quantity) + "=" + NONE;
    }

    /** {@return the name of a quantity in such an option} */
    public static String id(Quantity quantity) {
        return quantity.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Optional<Quantity> quantity(String id) {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> quantity != Quantity.OTHER && id(quantity).equalsIgnoreCase(id.strip()))
                .findFirst();
    }

    private static String unquoted(String text) {
        boolean quoted = text.length() > 2 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1) : text;
    }
}

package fairpull.io.json;

import fairpull.domain.audit.Printed;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What stands in the fields of a publication file; an item that is left out, or is “not disclosed”, was not disclosed. */
final class FieldText {
    static final String NOT_DISCLOSED = "not disclosed";
    private static final Pattern COMMA = Pattern.compile("\\d,\\d");

    private FieldText() {
    }

    /** A field whose text is refused, so that its line can be told. */
    static final class RefusedField extends IllegalArgumentException {
        private static final long serialVersionUID = 1;
        private final String pointer;

        RefusedField(String object, String field, IllegalArgumentException reason) {
            super(object + "." + field + ": " + reason.getMessage(), reason);
            this.pointer = "/" + object + "/" + field;
        }

        /** {@return which field of the file} */
        String pointer() {
            return pointer;
        }
    }

    /** The texts of one object of the file by their fields: what one of them says, if it was disclosed. */
    record Of(String object) {
        <T> Optional<T> item(String field, Optional<String> text, Function<String, T> read) {
            try {
                return given(text).map(read);
            } catch (IllegalArgumentException refused) {
                throw refused(field, refused);
            }
        }

        RefusedField refused(String field, IllegalArgumentException reason) {
            return new RefusedField(object, field, reason);
        }
    }

    static <T> Optional<T> opt(Optional<T> value) {
        return value == null ? Optional.empty() : value;
    }

    static Optional<String> given(Optional<String> text) {
        return opt(text).map(FieldText::plain).filter(known -> !known.isEmpty() && !known.equalsIgnoreCase(NOT_DISCLOSED));
    }

    static Printed printed(String text) {
        return Printed.parse(text).orElseThrow(() -> new IllegalArgumentException("expected a figure as it was printed, such as "
                + "“214.3 hp”, found “" + text + "”" + (COMMA.matcher(text).find() ? "; write a point for the comma" : "")));
    }

    /** {@return a figure that says its unit} */
    static Printed withUnit(String text) {
        Printed figure = printed(text);
        if (figure.unit().equals(Units.ONE)) {
            throw new IllegalArgumentException("expected a figure with its unit, such as “214.3 hp”, found “" + text + "”");
        }
        return figure;
    }

    /** {@return a text that is not empty; where it is, {@code lacking} says so} */
    static String some(String text, String lacking) {
        String plain = plain(text);
        if (plain.isEmpty()) {
            throw new IllegalArgumentException(lacking);
        }
        return plain;
    }

    /** {@return a text without what only steers a terminal} */
    static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ").strip();
    }

    /** {@return an engine speed in rad/s} */
    static double speed(String text) {
        Printed speed = printed(text);
        if (speed.unit().quantity() != Quantity.ENGINE_SPEED) {
            throw new IllegalArgumentException("expected an engine speed, such as “2500 rpm”, found “" + text + "”");
        }
        return speed.si();
    }

    /** {@return a height above sea level} */
    static Printed elevation(String text) {
        Printed height = printed(text);
        if (height.unit().quantity() != Quantity.LENGTH) {
            throw new IllegalArgumentException("expected a height, such as “300 m” or “1000 ft”, found “" + text + "”");
        }
        return height;
    }

    static int pulls(String text) {
        if (!text.matches("\\d{1,4}")) {
            throw new IllegalArgumentException("expected a number of pulls, found “" + text + "”");
        }
        return Integer.parseInt(text);
    }

    static boolean yes(String text) {
        if (!text.equals("yes") && !text.equals("no")) {
            throw new IllegalArgumentException("expected yes or no, found “" + text + "”");
        }
        return text.equals("yes");
    }

    static <T extends Enum<T>> T constant(String word, T[] values, String what) {
        return Arrays.stream(values).filter(value -> Mapper.word(value).equals(word)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(what + " is one of " + String.join(", ",
                        Arrays.stream(values).map(Mapper::word).toList()) + ", was “" + word + "”"));
    }
}

package fairpull.io.json;

import fairpull.domain.audit.Printed;
import fairpull.domain.audit.RefusedPart;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** What stands in the fields of a publication file; an item that is left out, or is “not disclosed”, was not disclosed. */
final class FieldText {
    static final String NOT_DISCLOSED = "not disclosed";

    private FieldText() {
    }

    /** One object of the file, by the names and places that lead to it: what is refused of it is told with its field. */
    record Of(String object) {
        /** {@return what a field says, if it was disclosed} */
        <T> Optional<T> item(String field, Optional<String> text, Function<String, T> read) {
            return inner(field).whole(() -> given(text).map(read));
        }

        /** {@return what a field says that cannot be left out} */
        <T> T field(String field, String text, Function<String, T> read) {
            return inner(field).whole(() -> read.apply(text));
        }

        /** {@return what a list of texts says} */
        <T> List<T> list(String field, List<String> texts, Function<String, T> read) {
            return inner(field).whole(() -> texts.stream().map(read).toList());
        }

        /** {@return what is refused of a field} */
        RefusedPart refused(String field, IllegalArgumentException reason) {
            return new RefusedPart(object + "/" + field, (object + "." + field).replace('/', '.') + ": " + reason.getMessage());
        }

        /** {@return an object within this one} */
        Of inner(String field) {
            return new Of(object + "/" + field);
        }

        /** {@return all of the object; what the domain refuses of it is refused of this place} */
        <T> T whole(Supplier<T> made) {
            try {
                return made.get();
            } catch (RefusedPart refused) {
                boolean isPlaced = refused.part().startsWith(object + "/") || refused.part().equals(object);
                throw isPlaced ? refused : new RefusedPart(object + "/" + refused.part(), refused.getMessage());
            } catch (IllegalArgumentException refused) {
                throw new RefusedPart(object, object.replace('/', '.') + ": " + refused.getMessage());
            }
        }
    }

    /** {@return what each object of a list says, with its place} */
    static <F, T> List<T> each(String list, List<F> objects, BiFunction<F, Of, T> read) {
        return IntStream.range(0, objects.size()).mapToObj(place -> {
            Of here = new Of(list + "/" + place);
            return here.whole(() -> read.apply(objects.get(place), here));
        }).toList();
    }

    static <T> Optional<T> opt(Optional<T> value) {
        return value == null ? Optional.empty() : value;
    }

    static Optional<String> given(Optional<String> text) {
        return opt(text).map(FieldText::plain).filter(known -> !known.isEmpty() && !known.equalsIgnoreCase(NOT_DISCLOSED));
    }

    static Printed printed(String text) {
        Printed printed = number(text);
        if (printed.unit().equals(Units.ONE)) {
            throw new IllegalArgumentException("expected a figure with its unit, as a text such as “" + printed.number() + " hp”, found “"
                    + text + "”");
        }
        return printed;
    }

    /** {@return a figure that may stand without a unit} */
    static Printed number(String text) {
        return Printed.parse(text).orElseThrow(() -> new IllegalArgumentException("expected a figure as it was printed, such as "
                + "“214.3 hp”, found “" + text + "”"));
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

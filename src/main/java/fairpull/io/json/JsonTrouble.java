package fairpull.io.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.InvalidNullException;
import com.fasterxml.jackson.databind.exc.InvalidTypeIdException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import fairpull.domain.InputException;
import fairpull.domain.audit.RefusedPart;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What Jackson complains about, in one line of ours with file, line and place: its own words are for programmers. */
final class JsonTrouble {
    /** How Jackson says that a field is not there, or is null where it must not be. */
    private static final Pattern ABSENT_FIELD =
            Pattern.compile("(?<kind>Null|Missing)(?: value for| required) creator property '(?<field>[^']*)'");
    private static final Pattern REPEATED_FIELD = Pattern.compile("Duplicate field '(?<field>[^']*)'.*", Pattern.DOTALL);

    private static final String CORRECT_IT = "correct it there";

    private JsonTrouble() {
    }

    /** {@return the trouble as it is told, without a line} */
    static InputException told(JsonProcessingException trouble, String file) {
        return said(InputException.Place.of(file), where(trouble) + what(trouble), remedy(trouble));
    }

    /** {@return the trouble with a text, as it is told; {@code firstLine} is that of the text in its file} */
    static InputException told(JsonProcessingException trouble, String text, String file, int firstLine) {
        JsonLocation location = unknownField(trouble).flatMap(field -> JsonPlaces.of(text, field)).orElse(trouble.getLocation());
        InputException.Place place = location == null ? InputException.Place.of(file) : at(location, file, firstLine);
        return said(place, where(trouble) + what(trouble), remedy(trouble));
    }

    /** {@return what the domain refuses of a file that was read, with the line of the field where one is to blame} */
    static InputException refused(IllegalArgumentException reason, String text, String file) {
        InputException.Place place = reason instanceof RefusedPart refused
                ? JsonPlaces.of(text, JsonPointer.compile("/" + refused.part())).map(location -> at(location, file, 1))
                        .orElse(InputException.Place.of(file)) : InputException.Place.of(file);
        return said(place, String.valueOf(reason.getMessage()), CORRECT_IT);
    }

    private static InputException.Place at(JsonLocation location, String file, int firstLine) {
        return InputException.Place.of(file, location.getLineNr() + firstLine - 1, String.valueOf(location.getColumnNr()));
    }

    /** An unknown field is found out only at the end of its object. */
    private static Optional<JsonPointer> unknownField(JsonProcessingException trouble) {
        return trouble instanceof UnrecognizedPropertyException unknown
                ? Optional.of(JsonPointer.compile(unknown.getPath().stream().map(step -> step.getFieldName() == null
                        ? "/" + step.getIndex() : "/" + step.getFieldName().replace("~", "~0").replace("/", "~1"))
                        .collect(Collectors.joining()))) : Optional.empty();
    }

    /** A value that this program refuses itself, in its own words. */
    static final class Refused extends JsonMappingException {
        private static final long serialVersionUID = 1;

        Refused(JsonParser parser, String words) {
            super(parser, words);
        }
    }

    private static String where(JsonProcessingException trouble) {
        if (!(trouble instanceof JsonMappingException mapping) || mapping.getPath().isEmpty()) {
            return "";
        }
        return mapping.getPath().stream()
                .map(step -> step.getFieldName() == null ? String.valueOf(step.getIndex()) : step.getFieldName())
                .collect(Collectors.joining(".")) + ": ";
    }

    private static String what(JsonProcessingException trouble) {
        if (trouble instanceof Refused) {
            return trouble.getOriginalMessage();
        }
        if (trouble instanceof ValueInstantiationException refused && refused.getCause() != null) {
            return String.valueOf(refused.getCause().getMessage());
        }
        if (trouble instanceof UnrecognizedPropertyException) {
            return "no such field";
        }
        if (trouble instanceof InvalidNullException) {
            return "null stands where a value must be";
        }
        if (trouble instanceof InvalidTypeIdException kind) {
            return kind.getTypeId() == null ? "the kind is missing" : "“" + kind.getTypeId() + "” is no kind known here";
        }
        if (trouble instanceof InvalidFormatException format) {
            return "“" + format.getValue() + "” stands where " + wanted(format.getTargetType()) + " belongs";
        }
        return trouble instanceof JsonMappingException ? structure(trouble) : syntax(trouble);
    }

    private static String structure(JsonProcessingException trouble) {
        Matcher absent = ABSENT_FIELD.matcher(trouble.getOriginalMessage());
        if (absent.lookingAt()) {
            return absent.group("field") + ": " + (absent.group("kind").equals("Null") ? "must not be null" : "the field is missing");
        }
        if (trouble.getOriginalMessage().startsWith("Trailing token")) {
            return "not JSON: something stands behind its end";
        }
        Class<?> type = trouble instanceof MismatchedInputException mismatch ? mismatch.getTargetType() : null;
        return "something else stands where " + wanted(type) + " belongs";
    }

    private static String syntax(JsonProcessingException trouble) {
        Matcher repeated = REPEATED_FIELD.matcher(trouble.getOriginalMessage());
        if (repeated.lookingAt()) {
            return "the field " + repeated.group("field") + " stands twice";
        }
        if (trouble instanceof StreamConstraintsException) {
            return "not JSON that is read here: a number or a text is too long, or it is nested too deep";
        }
        return trouble instanceof JsonEOFException
                ? "not JSON: it breaks off before its end"
                : "not JSON: a character stands here that does not belong there";
    }

    private static String wanted(Class<?> type) {
        if (type == null) {
            return "another value";
        }
        if (type.isEnum()) {
            return "one of " + Arrays.stream(type.getEnumConstants()).map(constant -> Mapper.word((Enum<?>) constant))
                    .collect(Collectors.joining(", "));
        }
        if (type == int.class || type == long.class || type == Integer.class || type == Long.class) {
            return "a whole number";
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        return type == String.class ? "a text in quotes" : Collection.class.isAssignableFrom(type) ? "a list in brackets"
                : "an object in braces";
    }

    /** What is refused may say itself what to do, behind its last semicolon. */
    private static InputException said(InputException.Place place, String words, String otherwise) {
        int end = words.lastIndexOf("; ");
        return end < 0 ? new InputException(place, words, otherwise)
                : new InputException(place, words.substring(0, end), words.substring(end + 2));
    }

    private static String remedy(JsonProcessingException trouble) {
        if (trouble instanceof UnrecognizedPropertyException unknown) {
            return "known here: " + unknown.getKnownPropertyIds().stream().map(String::valueOf).sorted().collect(Collectors.joining(", "));
        }
        return CORRECT_IT;
    }
}

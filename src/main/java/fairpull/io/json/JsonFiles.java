package fairpull.io.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.exc.InvalidNullException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairpull.domain.InputException;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads and writes records as JSON, and turns what Jackson complains about into one line with file, line and place. */
final class JsonFiles {
    /** How Jackson says that a field is not there, or is null where it must not be. */
    private static final Pattern ABSENT_FIELD =
            Pattern.compile("(?<kind>Null|Missing)(?: value for| required) creator property '(?<field>[^']*)'");

    private JsonFiles() {
    }

    /** {@return the record in a text; {@code file} and {@code firstLine} are for messages only} */
    static <T> T read(String text, Class<T> type, String file, int firstLine) {
        try {
            return Mapper.strict().readValue(text, type);
        } catch (JsonProcessingException trouble) {
            throw unusable(trouble, file, firstLine);
        }
    }

    /** {@return the tree in a text} */
    static JsonNode tree(String text, String file) {
        try {
            return Mapper.strict().readTree(text);
        } catch (JsonProcessingException trouble) {
            throw unusable(trouble, file, 1);
        }
    }

    /** {@return the record in a tree; trouble is said without a line} */
    static <T> T read(JsonNode tree, Class<T> type, String file) {
        try {
            return Mapper.strict().treeToValue(tree, type);
        } catch (JsonProcessingException trouble) {
            throw unusable(trouble, file, -1);
        }
    }

    /** {@return the value with keys sorted, without blanks} */
    static String canonical(Object value) {
        return written(value, Mapper.strict().writer());
    }

    /** {@return the same content for people, ending in a line feed} */
    static String indented(Object value) {
        return written(value, Mapper.indented()) + "\n";
    }

    /** {@return a document whose keys stay in the order in which they are read} */
    static String document(JsonNode tree) {
        try {
            return Mapper.indented().writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String written(Object value, ObjectWriter writer) {
        try {
            return writer.writeValueAsString(sorted(Mapper.strict().valueToTree(value)));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Sorts the keys at every depth; Jackson alone would put the kind of a variant first. */
    private static JsonNode sorted(JsonNode node) {
        if (node instanceof ObjectNode object) {
            ObjectNode result = object.objectNode();
            Map<String, JsonNode> fields = new TreeMap<>();
            object.properties().forEach(field -> fields.put(field.getKey(), sorted(field.getValue())));
            result.setAll(fields);
            return result;
        }
        if (node instanceof ArrayNode array) {
            ArrayNode result = array.arrayNode();
            array.forEach(element -> result.add(sorted(element)));
            return result;
        }
        return node;
    }

    private static InputException unusable(JsonProcessingException trouble, String file, int firstLine) {
        JsonLocation location = trouble.getLocation();
        InputException.Place place = location == null || firstLine < 0
                ? InputException.Place.of(file)
                : InputException.Place.of(file, location.getLineNr() + firstLine - 1, String.valueOf(location.getColumnNr()));
        return new InputException(place, where(trouble) + what(trouble), remedy(trouble));
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
        if (trouble instanceof UnrecognizedPropertyException) {
            return "no such field";
        }
        if (trouble instanceof InvalidNullException) {
            return "null stands where a value must be";
        }
        if (trouble instanceof ValueInstantiationException refused && refused.getCause() != null) {
            return String.valueOf(refused.getCause().getMessage());
        }
        String said = trouble.getOriginalMessage();
        Matcher absent = ABSENT_FIELD.matcher(said);
        if (absent.lookingAt()) {
            return absent.group("field") + ": " + (absent.group("kind").equals("Null") ? "must not be null" : "the field is missing");
        }
        return trouble instanceof JsonMappingException
                ? said.replaceAll("\\(?(for |of )?type `?[\\w.$<>\\[\\]]+`?\\)?:? ?", "").replaceAll("`?(fairpull|java)[\\w.$]+`?", "value")
                : "not JSON: " + said;
    }

    private static String remedy(JsonProcessingException trouble) {
        if (trouble instanceof UnrecognizedPropertyException unknown) {
            return "known here: " + unknown.getKnownPropertyIds().stream().map(String::valueOf).sorted().collect(Collectors.joining(", "));
        }
        return "correct it there";
    }
}

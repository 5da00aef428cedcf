package fairpull.io.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;

/** Reads and writes records as JSON. */
final class JsonFiles {
    private JsonFiles() {
    }

    /** {@return the record in a text; {@code file} and {@code firstLine} are for messages only} */
    static <T> T read(String text, Class<T> type, String file, int firstLine) {
        try {
            return Mapper.strict().readValue(text, type);
        } catch (JsonProcessingException trouble) {
            throw JsonTrouble.told(trouble, text, file, firstLine);
        }
    }

    /** {@return the tree in a text} */
    static JsonNode tree(String text, String file) {
        try {
            return Mapper.strict().readTree(text);
        } catch (JsonProcessingException trouble) {
            throw JsonTrouble.told(trouble, text, file, 1);
        }
    }

    /** {@return the record in a tree; trouble is said without a line} */
    static <T> T read(JsonNode tree, Class<T> type, String file) {
        try {
            return Mapper.strict().treeToValue(tree, type);
        } catch (JsonProcessingException trouble) {
            throw JsonTrouble.told(trouble, file);
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
}

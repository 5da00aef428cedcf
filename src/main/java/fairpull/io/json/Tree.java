package fairpull.io.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairpull.domain.unit.PlainNumber;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiConsumer;

/** Builds an answer key by key, in the order in which it is read; a figure that does not exist is null. */
final class Tree {
    private final ObjectNode node;

    private Tree(ObjectNode node) {
        this.node = node;
    }

    static Tree empty() {
        return new Tree(Mapper.strict().createObjectNode());
    }

    /** Numbers that are not finite do not exist in JSON and become null. */
    Tree number(String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, PlainNumber.shortest(value));
        } else {
            node.putNull(key);
        }
        return this;
    }

    Tree number(String key, OptionalDouble value) {
        return number(key, value.orElse(Double.NaN));
    }

    Tree whole(String key, long value) {
        node.put(key, value);
        return this;
    }

    Tree whole(String key, OptionalInt value) {
        if (value.isPresent()) {
            node.put(key, value.getAsInt());
        } else {
            node.putNull(key);
        }
        return this;
    }

    Tree text(String key, String value) {
        node.put(key, value);
        return this;
    }

    Tree flag(String key, boolean value) {
        node.put(key, value);
        return this;
    }

    Tree nothing(String key) {
        node.putNull(key);
        return this;
    }

    Tree tree(String key, Tree value) {
        node.set(key, value.node);
        return this;
    }

    /** A record of the domain, as files hold it. */
    Tree record(String key, Object value) {
        node.set(key, Mapper.strict().valueToTree(value));
        return this;
    }

    Tree texts(String key, List<String> values) {
        ArrayNode array = node.putArray(key);
        values.forEach(array::add);
        return this;
    }

    Tree numbers(String key, List<Double> values) {
        ArrayNode array = node.putArray(key);
        values.forEach(value -> array.add(Double.isFinite(value) ? PlainNumber.shortest(value) : null));
        return this;
    }

    <T> Tree trees(String key, List<T> values, BiConsumer<Tree, T> fill) {
        ArrayNode array = node.putArray(key);
        for (T value : values) {
            Tree element = empty();
            fill.accept(element, value);
            array.add(element.node);
        }
        return this;
    }

    /** {@return the document, indented, ending in a line feed} */
    String document() {
        return JsonFiles.document(node);
    }
}

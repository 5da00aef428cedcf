package fairpull.io.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Where a field stands in a text: what is refused once its object is complete is told where it is, not where the object ends. */
final class JsonPlaces {
    private JsonPlaces() {
    }

    /** {@return the place of a field's name, or of the opening brace of an object in a list; empty where the text has none such} */
    static Optional<JsonLocation> of(String text, JsonPointer field) {
        try (JsonParser parser = Mapper.strict().createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                boolean begins = token == JsonToken.FIELD_NAME || token == JsonToken.START_OBJECT;
                if (begins && parser.getParsingContext().pathAsPointer().equals(field)) {
                    return Optional.of(parser.currentTokenLocation());
                }
            }
            return Optional.empty();
        } catch (JsonProcessingException broken) {
            return Optional.empty();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}

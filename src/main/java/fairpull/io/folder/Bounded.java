package fairpull.io.folder;

import fairpull.domain.InputException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a text from a stranger: no longer than it may be, and UTF-8 or nothing. */
public final class Bounded {
    private Bounded() {
    }

    /** {@return the text of a file, UTF-8 and no longer than it may be} */
    public static String text(Path file, long mostBytes) throws IOException {
        return text(ByteBuffer.wrap(bytes(file, mostBytes)), file);
    }

    static byte[] bytes(Path file, long mostBytes) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new InputException(InputException.Place.of(file.toString()), "no such file", "restore it from a copy");
        }
        if (Files.size(file) > mostBytes) {
            throw tooLarge(file.getFileName().toString(), mostBytes);
        }
        return Files.readAllBytes(file);
    }

    static String text(ByteBuffer bytes, Path file) {
        try {
            return StandardCharsets.UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(bytes)
                    .toString();
        } catch (CharacterCodingException malformed) {
            throw new InputException(InputException.Place.of(file.getFileName().toString()), "not UTF-8 text", "save it as UTF-8");
        }
    }

    static InputException tooLarge(String name, long mostBytes) {
        return new InputException(InputException.Place.of(name), "larger than " + (mostBytes >> 20) + " MiB",
                "this is not a file that Fairpull wrote");
    }
}

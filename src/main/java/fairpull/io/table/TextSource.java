package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file known to be text, with its encoding: the step from bytes to characters.
 *
 * @param file the file
 * @param charset its encoding
 * @param markLength how many bytes its byte-order mark takes; 0 without one
 * @param lineEnded whether its last line has an end
 */
record TextSource(Path file, Charset charset, int markLength, boolean lineEnded) {
    /** The largest file that is read: 512 MB. */
    static final long MAXIMUM_BYTES = 512L << 20;

    /**
     * Looks at a file.
     *
     * @throws InputException if it is missing, not a file, empty, too large or not text
     */
    static TextSource of(Path file) {
        try {
            checkSize(file);
            TextScan.Result scan = TextScan.of(file);
            return new TextSource(file, scan.charset(), scan.markLength(), scan.lineEnded());
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    /** {@return the characters of the file after its byte-order mark; a byte that is no character is an error} */
    Reader open() throws IOException {
        InputStream bytes = Files.newInputStream(file);
        bytes.skipNBytes(markLength);
        return new InputStreamReader(bytes, charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
    }

    static InputException unreadable(Path file, IOException cause) {
        InputException refusal = cause instanceof CharacterCodingException
                ? new InputException(Place.of(file.toString()), "some of its bytes are no text in any encoding that is known here",
                        "export it again as UTF-8 text")
                : new InputException(Place.of(file.toString()), "the file cannot be read", "check that it is there and may be read");
        refusal.initCause(cause);
        return refusal;
    }

    private static void checkSize(Path file) throws IOException {
        Place place = Place.of(file.toString());
        if (!Files.exists(file)) {
            throw new InputException(place, "there is no such file", "check the name");
        }
        if (!Files.isRegularFile(file)) {
            throw new InputException(place, "this is not a file", "name a file with a table");
        }
        long bytes = Files.size(file);
        if (bytes == 0) {
            throw new InputException(place, "the file is empty", "export it again");
        }
        if (bytes > MAXIMUM_BYTES) {
            throw new InputException(place, "the file has " + (bytes >> 20) + " MB and the limit is " + (MAXIMUM_BYTES >> 20) + " MB",
                    "export fewer channels or a lower rate");
        }
    }
}

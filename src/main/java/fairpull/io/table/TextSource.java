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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A file known to be text, with its encoding: the step from bytes to characters.
 *
 * @param file the file
 * @param charset its encoding
 * @param markLength how many bytes its byte-order mark takes; 0 without one
 * @param lineEnded whether its last line has an end
 * @param blanksRoundQuotes whether quotes in its first lines have blanks between them and the delimiter
 * @param fixedWidth the columns of a table without delimiters, which are told apart when it is opened
 */
record TextSource(Path file, Charset charset, int markLength, boolean lineEnded, boolean blanksRoundQuotes,
                  Optional<FixedWidth> fixedWidth) {
    /** The largest file that is read: 512 MB. */
    static final long MAXIMUM_BYTES = 512L << 20;
    private static final int LOOKED_AT = 40;
    private static final Pattern BLANK_BESIDE_QUOTE = Pattern.compile("(?:^|[,;\\t])[ \u00a0]+\"|\"[ \u00a0]+(?:[,;\\t]|$)");

    /**
     * Looks at a file.
     *
     * @throws InputException if it is missing, not a file, empty, too large or not text
     */
    static TextSource of(Path file) {
        try {
            checkSize(file);
            TextScan.Result scan = TextScan.of(file);
            TextSource source = new TextSource(file, scan.charset(), scan.markLength(), scan.lineEnded(), false, Optional.empty());
            return new TextSource(file, scan.charset(), scan.markLength(), scan.lineEnded(), source.hasBlanksRoundQuotes(),
                    Optional.empty());
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    /** {@return the characters of the file after its byte-order mark; a byte that is no character is an error} */
    Reader open() throws IOException {
        InputStream bytes = Files.newInputStream(file);
        bytes.skipNBytes(markLength);
        Reader plain = new InputStreamReader(bytes, charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
        return fixedWidth.isPresent() ? new FixedWidthReader(plain, fixedWidth.get(), file) : plain;
    }

    /** {@return the same text as a table of fixed columns} */
    TextSource with(FixedWidth columns) {
        return new TextSource(file, charset, markLength, lineEnded, false, Optional.of(columns));
    }

    /** {@return the first lines without their ends; what is longer than a cell may be is cut off} */
    List<String> firstLines(int most) {
        List<String> lines = new ArrayList<>();
        try (LineCutter cutter = new LineCutter(open())) {
            String line = cutter.next();
            while (line != null && lines.size() < most) {
                lines.add(line);
                line = cutter.next();
            }
        } catch (IOException e) {
            throw unreadable(file, e);
        }
        return lines;
    }

    private boolean hasBlanksRoundQuotes() {
        return firstLines(LOOKED_AT).stream().anyMatch(line -> BLANK_BESIDE_QUOTE.matcher(line).find());
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

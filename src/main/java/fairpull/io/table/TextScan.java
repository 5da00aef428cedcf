package fairpull.io.table;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Tells the encoding of a file from all of its bytes: a byte-order mark, else UTF-8 where every byte fits it, else Latin-1 as loggers
 * write it (windows-1252). Text without a mark that has a zero in every second byte is UTF-16; any other zero means that it is no text.
 */
final class TextScan {
    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int CHUNK = 1 << 16;
    /** More control characters than one in so many bytes are no text. */
    private static final int BYTES_FOR_ONE_CONTROL = 1000;

    private final byte[] head = new byte[3];
    private long count;
    private final long[] zeros = new long[2];
    private long controls;
    private boolean fitsUtf8 = true;
    private int continuationsDue;
    private long wholeCharacters;
    private boolean lineEnded;

    private TextScan() {
    }

    /**
     * What a file turned out to be.
     *
     * @param charset its encoding
     * @param markLength the length of its byte-order mark
     * @param lineEnded whether its last line has an end
     */
    record Result(Charset charset, int markLength, boolean lineEnded) {
    }

    static Result of(Path file) throws IOException {
        TextScan scan = new TextScan();
        byte[] chunk = new byte[CHUNK];
        try (InputStream bytes = Files.newInputStream(file)) {
            for (int read = bytes.read(chunk); read >= 0; read = bytes.read(chunk)) {
                scan.take(chunk, read);
            }
        }
        return scan.result(Place.of(file.toString()));
    }

    private void take(byte[] chunk, int length) {
        for (int i = 0; i < length; i++) {
            int value = chunk[i] & 0xFF;
            if (count < head.length) {
                head[(int) count] = chunk[i];
            }
            if (value >= 0x80 || continuationsDue > 0) {
                followUtf8(value);
            }
            if (value < 0x20) {
                countControl(value);
            }
            lineEnded = value == '\n' || value == '\r' || value == 0 && lineEnded;
            count++;
        }
    }

    private void followUtf8(int value) {
        if (continuationsDue > 0) {
            fitsUtf8 &= (value & 0xC0) == 0x80;
            continuationsDue--;
            wholeCharacters += continuationsDue == 0 ? 1 : 0;
        } else if (value >= 0xC2 && value <= 0xF4) {
            continuationsDue = value < 0xE0 ? 1 : value < 0xF0 ? 2 : 3;
        } else {
            fitsUtf8 = false;
        }
    }

    private void countControl(int value) {
        if (value == 0) {
            zeros[(int) (count & 1)]++;
        } else if (value != '\t' && value != '\n' && value != '\r' && value != '\f') {
            controls++;
        }
    }

    private Result result(Place place) {
        Result result = byMark().orElseGet(() -> byContent(place));
        boolean sixteenBit = !result.charset().equals(StandardCharsets.UTF_8) && !result.charset().equals(WINDOWS_1252);
        if (sixteenBit && (count - result.markLength()) % 2 != 0) {
            throw cutOff(place);
        }
        if (count == result.markLength()) {
            throw new InputException(place, "the file is empty", "export it again");
        }
        return result;
    }

    private Optional<Result> byMark() {
        if (startsWith(0xEF, 0xBB, 0xBF)) {
            return Optional.of(new Result(StandardCharsets.UTF_8, 3, lineEnded));
        }
        if (startsWith(0xFF, 0xFE)) {
            return Optional.of(new Result(StandardCharsets.UTF_16LE, 2, lineEnded));
        }
        return startsWith(0xFE, 0xFF) ? Optional.of(new Result(StandardCharsets.UTF_16BE, 2, lineEnded)) : Optional.empty();
    }

    private boolean startsWith(int... mark) {
        boolean matches = count >= mark.length;
        for (int i = 0; i < mark.length && matches; i++) {
            matches = (head[i] & 0xFF) == mark[i];
        }
        return matches;
    }

    private Result byContent(Place place) {
        if (isEverySecondByteZero(1)) {
            return new Result(StandardCharsets.UTF_16LE, 0, lineEnded);
        }
        if (isEverySecondByteZero(0)) {
            return new Result(StandardCharsets.UTF_16BE, 0, lineEnded);
        }
        if (zeros[0] + zeros[1] > 0 || controls * BYTES_FOR_ONE_CONTROL > count) {
            throw new InputException(place, "this is a binary file, not text", "export the table as CSV");
        }
        boolean endsInsideCharacter = fitsUtf8 && continuationsDue > 0;
        if (endsInsideCharacter && wholeCharacters > 0) {
            throw cutOff(place);
        }
        return new Result(fitsUtf8 && !endsInsideCharacter ? StandardCharsets.UTF_8 : WINDOWS_1252, 0, lineEnded);
    }

    private boolean isEverySecondByteZero(int parity) {
        return count >= 8 && zeros[1 - parity] == 0 && zeros[parity] * 2.5 >= count;
    }

    private static InputException cutOff(Place place) {
        return new InputException(place, "the file ends in the middle of a character", "it seems cut off: export it again");
    }
}

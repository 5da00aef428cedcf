package fairpull.io.table;

import fairpull.domain.pull.DecimalMark;
import java.nio.charset.Charset;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * How a file is written down.
 *
 * @param charset the encoding of its text
 * @param byteOrderMark whether it begins with a byte-order mark
 * @param delimiter what separates cells
 * @param decimalMark what separates decimals
 * @param headerLine the line of the header, counted from 1; lines before it are a preamble
 * @param unitLine the line that holds the units, where they have a line of their own
 */
public record Dialect(Charset charset, boolean byteOrderMark, Delimiter delimiter, DecimalMark decimalMark,
                      int headerLine, OptionalInt unitLine) {
    public Dialect {
        Objects.requireNonNull(charset, "charset");
        Objects.requireNonNull(delimiter, "delimiter");
        Objects.requireNonNull(decimalMark, "decimalMark");
        Objects.requireNonNull(unitLine, "unitLine");
        if (headerLine < 1) {
            throw new IllegalArgumentException("a header line is counted from 1, was " + headerLine);
        }
    }
}

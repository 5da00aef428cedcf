package fairpull.io.table;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * Names a header, so that a mapping can be remembered for it: SHA-256 over the delimiter, the header cells and the line of units,
 * whatever their case and blanks. The decimal mark, the encoding and nameless cells at the end do not count: they may differ between
 * files of one logger.
 */
final class Fingerprint {
    private static final int LENGTH = 16;

    private Fingerprint() {
    }

    static String of(Layout layout) {
        return of(layout, List.of());
    }

    /** {@return the name of a header together with names that stand among the data} */
    static String of(Layout layout, List<String> amongData) {
        StringBuilder text = new StringBuilder(layout.sample().delimiter().name());
        append(text, layout.names());
        layout.units().ifPresent(row -> append(text, row));
        amongData.forEach(name -> text.append('\n').append(name.toLowerCase(Locale.ROOT)));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void append(StringBuilder text, Sample.SampleRow row) {
        text.append('\n');
        for (String cell : row.cells().subList(0, row.usedCells())) {
            text.append(cell.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ")).append('\t');
        }
    }
}

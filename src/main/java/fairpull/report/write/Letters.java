package fairpull.report.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Which letters a PDF can show: those of the two typefaces that come with the program. Typefaces of the system would show more, and other
 * bytes on every machine. A letter without a shape is shown as {@link #MARK}, and a note says which ones those are.
 */
final class Letters {
    /** Stands for a letter without a shape; both a reader and the typeface have it. */
    static final String MARK = "□";
    /** Below this point, the letters of Latin-1, nothing is asked. */
    private static final int LATIN = 0x180;
    private static final int SOFT_HYPHEN = 0xad;
    /** So many letters are named one by one. */
    private static final int MOST_NAMED = 12;
    private static final List<CmapLookup> TYPEFACES = List.of(typeface(HtmlToPdf.ROBOTO + "Regular.ttf"), typeface(HtmlToPdf.LIBERATION));

    private Letters() {
    }

    private static CmapLookup typeface(String resource) {
        try (InputStream font = Letters.class.getResourceAsStream(resource);
                TrueTypeFont read = new TTFParser().parse(new RandomAccessReadBuffer(font))) {
            return read.getUnicodeCmapLookup();
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    /**
     * {@return a text with a mark for each letter that has no shape} Signs that only tell a program how to set letters, such as those that
     * turn the order of reading, are left out: they have no shape, and strangers could make a text read otherwise than it is.
     *
     * @param missing takes the letters without a shape
     */
    static String shown(String text, Collection<Integer> missing) {
        if (text.chars().allMatch(letter -> letter < LATIN && letter != SOFT_HYPHEN)) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().filter(point -> !isSilent(point)).forEach(point -> {
            if (hasShape(point)) {
                shown.appendCodePoint(point);
            } else {
                missing.add(point);
                shown.append(MARK);
            }
        });
        return shown.toString();
    }

    /** {@return the note that belongs to marks} */
    static String note(Collection<Integer> missing) {
        List<Integer> named = new ArrayList<>(missing).subList(0, Math.min(missing.size(), MOST_NAMED));
        String more = missing.size() > named.size() ? " and " + (missing.size() - named.size()) + " more" : "";
        return MARK + " stands for a letter that the typefaces of this PDF lack: "
                + named.stream().map(point -> String.format(Locale.ROOT, "U+%04X", point)).collect(Collectors.joining(", ")) + more
                + ". The same page as HTML shows it.";
    }

    private static boolean hasShape(int point) {
        return point < ' ' || TYPEFACES.stream().anyMatch(typeface -> typeface.getGlyphId(point) != 0);
    }

    /** Format signs, and those that choose among shapes of one letter. */
    private static boolean isSilent(int point) {
        return Character.getType(point) == Character.FORMAT || point >= 0xfe00 && point <= 0xfe0f || point >= 0xe0100 && point <= 0xe01ef;
    }
}

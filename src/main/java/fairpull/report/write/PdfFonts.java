package fairpull.report.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document's charts, each with only the letters that are used; a letter that one lacks is taken from another. */
final class PdfFonts {
    private static final String UNKNOWN = "?";

    private final List<PDFont> regular;
    private final List<PDFont> bold;

    /** A stretch of text in one font. */
    record Run(PDFont font, String text) {
        double width(double size) throws IOException {
            return font.getStringWidth(text) / 1000 * size;
        }
    }

    private PdfFonts(PDFont regular, PDFont bold, PDFont fallback) {
        this.regular = List.of(regular, fallback);
        this.bold = List.of(bold, fallback);
    }

    static PdfFonts of(PDDocument document) {
        return new PdfFonts(load(document, HtmlToPdf.ROBOTO + "Regular.ttf"), load(document, HtmlToPdf.ROBOTO + "Bold.ttf"),
                load(document, HtmlToPdf.LIBERATION));
    }

    private static PDFont load(PDDocument document, String resource) {
        try (InputStream font = PdfFonts.class.getResourceAsStream(resource)) {
            return PDType0Font.load(document, font, true);
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    List<PDFont> all() {
        return Stream.concat(regular.stream(), bold.stream()).distinct().toList();
    }

    /** {@return a text in stretches that each have one font} */
    List<Run> runs(String text, boolean isBold) {
        List<Run> runs = new ArrayList<>();
        ReadingOrder.onLine(Letters.shown(HtmlToPdf.printable(text), new ArrayList<>())).codePoints().forEach(point -> {
            String letter = Character.toString(point);
            PDFont font = (isBold ? bold : regular).stream().filter(one -> has(one, letter)).findFirst().orElse(null);
            Run run = font == null ? new Run(regular.get(0), UNKNOWN) : new Run(font, letter);
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.font() == run.font()) {
                runs.set(runs.size() - 1, new Run(last.font(), last.text() + run.text()));
            } else {
                runs.add(run);
            }
        });
        return runs;
    }

    private static boolean has(PDFont font, String letter) {
        try {
            font.encode(letter);
            return true;
        } catch (IllegalArgumentException | IOException noSuchLetter) {
            return false;
        }
    }
}

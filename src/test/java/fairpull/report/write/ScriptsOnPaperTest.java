package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.chart.Drawing;
import fairpull.report.chart.Point;
import fairpull.report.chart.Role;
import fairpull.report.chart.Shape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** Letters of other scripts in a PDF: in reading order where there are shapes, marked and told where there are none. */
class ScriptsOnPaperTest {
    private static final String ALEF_BET_GIMEL = "\u05d0\u05d1\u05d2";
    private static final String GIMEL_BET_ALEF = "\u05d2\u05d1\u05d0";

    /** Unicode Standard Annex 9, section 3.4, rule L2: in “car means CAR.” the capitals, which run from right to left, are turned. */
    @Test
    void wordsFromRightToLeftAreTurnedAndNumbersInThemAreNot() {
        assertThat(ReadingOrder.onLine("car means " + ALEF_BET_GIMEL + ".")).isEqualTo("car means " + GIMEL_BET_ALEF + ".");
        assertThat(ReadingOrder.onLine(ALEF_BET_GIMEL + " 12 \u05d3\u05d4 x")).isEqualTo("\u05d4\u05d3 12 " + GIMEL_BET_ALEF + " x");
        assertThat(ReadingOrder.onLine("x " + ALEF_BET_GIMEL + " (\u05d3) \u05d4"))
                .as("brackets still enclose").isEqualTo("x \u05d4 (\u05d3) " + GIMEL_BET_ALEF);
        assertThat(ReadingOrder.onLine("\u05e9\u05c1\u05dd")).as("the dot stays with its letter").isEqualTo("\u05dd\u05e9\u05c1");
        assertThat(ReadingOrder.onLine("plain (text) 12.5")).isEqualTo("plain (text) 12.5");
    }

    @Test
    void hebrewStandsInReadingOrderOnThePage() throws IOException {
        assertThat(lines("<p>part " + ALEF_BET_GIMEL + " 12 \u05d3\u05d4 end</p>"))
                .containsExactly("part \u05d4\u05d3 12 " + GIMEL_BET_ALEF + " end");
        assertThat(lines("<h1><b>" + ALEF_BET_GIMEL + "</b></h1>")).containsExactly(GIMEL_BET_ALEF);
    }

    @Test
    void eachLineOfALongTextIsTurnedByItself() throws IOException {
        List<String> words = new ArrayList<>();
        for (int word = 0; word < 60; word++) {
            words.add(ALEF_BET_GIMEL + (char) ('\u05d0' + word % 20));
        }
        List<String> shown = lines("<p>" + String.join(" ", words) + "</p>");
        assertThat(shown.size()).isGreaterThan(1);
        String read = shown.stream().map(line -> new StringBuilder(line).reverse().toString().strip()).collect(Collectors.joining(" "));
        assertThat(read).isEqualTo(String.join(" ", words));
    }

    @Test
    void aLetterWithoutAShapeIsMarkedAndToldAtTheFoot() throws IOException {
        List<String> lines = lines("<p>part \u6e2c\u8a66 \u0639\u0631 Ω Ж é</p>");
        assertThat(lines.get(0)).isEqualTo("part □□ □□ Ω Ж é");
        assertThat(String.join(" ", lines.subList(1, lines.size()))).isEqualTo("□ stands for a letter that the typefaces of this PDF lack: "
                + "U+6E2C, U+8A66, U+0639, U+0631. The same page as HTML shows it.");
        assertThat(lines("<p>nothing is missing ±5 … − × ≥ · “” Σ</p>")).hasSize(1);
    }

    @Test
    void theNoteStaysShortAndSignsWithoutAShapeAreLeftOut() {
        Set<Integer> missing = new LinkedHashSet<>();
        assertThat(Letters.shown("a\u202eb\u200d\ufe0f\u2066c", missing)).isEqualTo("abc");
        assertThat(missing).isEmpty();
        Letters.shown(new String(Character.toChars(0x1f680)) + "\u4e00\u4e01\u4e02\u4e03\u4e04\u4e05\u4e06\u4e07\u4e08\u4e09\u4e0a\u4e0b\u4e0c", missing);
        assertThat(Letters.note(missing)).contains("U+1F680, U+4E00").contains("U+4E0A and 2 more.");
    }

    @Test
    void chartsDoLikewise() throws IOException {
        Drawing drawing = new Drawing(400, 40, "a chart", "", List.of(new Shape.Words(new Point(20, 20),
                "x " + ALEF_BET_GIMEL + " \u6e2c", Role.INK, Shape.Type.SMALL, Shape.Anchor.START)));
        String page = "<object type=\"chart\" data=\"one\" style=\"display:block;width:150mm;height:15mm\"></object>";
        List<String> lines = lines(page, List.of(new Figure("one", drawing)));
        assertThat(lines.get(0)).isEqualTo("x " + GIMEL_BET_ALEF + " □");
        assertThat(lines.get(1)).contains("U+6E2C");
    }

    private static List<String> lines(String body) throws IOException {
        return lines(body, List.of());
    }

    /** {@return what stands on the first page, line by line, each from left to right by where its letters are} */
    private static List<String> lines(String body, List<Figure> figures) throws IOException {
        String page = "<html><head><title>t</title><style>body{font-family:Roboto,'Liberation Sans';font-size:10pt}</style></head><body>"
                + body + "</body></html>";
        List<TextPosition> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(HtmlToPdf.pdf(page, Optional.empty(), "t", figures).bytes())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    all.add(letter);
                }
            }.getText(document);
        }
        List<List<TextPosition>> lines = new ArrayList<>();
        all.stream().sorted(Comparator.comparingDouble(TextPosition::getY)).forEach(letter -> {
            List<TextPosition> last = lines.isEmpty() ? List.of() : lines.get(lines.size() - 1);
            if (last.isEmpty() || letter.getY() - last.get(0).getY() > 3) {
                lines.add(new ArrayList<>(List.of(letter)));
            } else {
                last.add(letter);
            }
        });
        return lines.stream().map(line -> line.stream().sorted(Comparator.comparingDouble(TextPosition::getX)).map(TextPosition::getUnicode)
                .collect(Collectors.joining()).strip()).toList();
    }
}

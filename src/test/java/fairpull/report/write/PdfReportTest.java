package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.Judgement;
import fairpull.report.CurveExamples;
import fairpull.report.Examples;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PdfReportTest {
    @ParameterizedTest
    @EnumSource(Paper.class)
    void chartsAreFormsOfLinesAndLettersNotPictures(Paper paper) throws IOException {
        try (PDDocument document = loaded(CurveExamples.in(Examples.gain(), CurveExamples.gain()), paper)) {
            List<PDXObject> objects = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    objects.add(page.getResources().getXObject(name));
                }
            }
            assertThat(objects).hasSize(6).allMatch(PDFormXObject.class::isInstance);
            assertThat(text(document)).contains("gain shown from 4025 to 6800", "worthwhile +3", "bandwidth ±", "this rig 0.9", "A1", "B2");
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void noTextLeavesThePage(Paper paper) throws IOException {
        for (String name : Examples.all().keySet()) {
            try (PDDocument document = loaded(CurveExamples.in(Examples.all().get(name), CurveExamples.lossAndGain()), paper)) {
                double width = document.getPage(0).getMediaBox().getWidth();
                double height = document.getPage(0).getMediaBox().getHeight();
                new PDFTextStripper() {
                    @Override
                    protected void writeString(String text, List<TextPosition> positions) {
                        for (TextPosition at : positions) {
                            assertThat((double) at.getX()).as(name + ": " + text).isBetween(30.0, width - 30);
                            assertThat((double) at.getX() + at.getWidth()).as(name + ": " + text).isLessThan(width - 25);
                            assertThat((double) at.getY()).as(name + ": " + text).isBetween(30.0, height - 20);
                        }
                    }
                }.getText(document);
            }
        }
    }

    @Test
    void allFontsAreEmbeddedWithTheirUsedLettersAlone() throws IOException {
        try (PDDocument document = loaded(CurveExamples.in(Examples.gain(), CurveExamples.gain()), Paper.A4)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+.*");
                }
            }
        }
    }

    @Test
    void everyPageHasItsNumberAndTheSealCode() throws IOException {
        try (PDDocument document = loaded(Examples.longTexts(), Paper.LETTER)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document)).contains(page + " of " + document.getNumberOfPages(), "seal 7KD2-9QXM-41");
            }
            assertThat(text(document)).contains(Examples.HOSTILE);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(612, within(0.1f));
        }
    }

    @Test
    void theSameJudgementGivesTheSameBytesDatedWithTheSeal() throws IOException {
        byte[] first = pdf(CurveExamples.in(Examples.gain(), CurveExamples.gain()), Paper.A4);

        assertThat(pdf(CurveExamples.in(Examples.gain(), CurveExamples.gain()), Paper.A4)).isEqualTo(first);
        try (PDDocument document = Loader.loadPDF(first)) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(Examples.gain().seal().orElseThrow().at().toInstant());
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Electric water pump against belt pump");
        }
        try (PDDocument unsealed = loaded(Examples.undecided(), Paper.A4)) {
            assertThat(unsealed.getDocumentInformation().getCreationDate()).isNull();
        }
    }

    private static byte[] pdf(Judgement judgement, Paper paper) {
        return HtmlReport.pdf(judgement, ReportOptions.full(), paper).bytes();
    }

    private static PDDocument loaded(Judgement judgement, Paper paper) throws IOException {
        return Loader.loadPDF(pdf(judgement, paper));
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document);
    }
}

package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.domain.audit.AuditAnswer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Audits on paper: what a page may not part. */
class AuditReportTest {
    /** The same figure at every place of a line: at some it meets the margin. */
    @Test
    void noLineEndsWithinANumber() throws IOException {
        StringBuilder html = new StringBuilder("<html><head><title>t</title></head><body>");
        for (int before = 0; before < 150; before++) {
            html.append("<p style='word-wrap:break-word'>").append("n ".repeat(before)).append("±51.75\u00a0hp and more</p>");
        }
        byte[] paper = HtmlToPdf.pdf(html.append("</body></html>").toString(), Optional.empty(), "t").bytes();

        List<String> lines = String.join("", pages(paper)).lines().map(String::strip).toList();
        assertThat(lines).filteredOn(line -> line.contains("51.75\u00a0hp") || line.contains("51.75 hp")).hasSize(150);
        assertThat(lines).anyMatch(line -> line.matches("±51.75.hp and more"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"inlet", "silent", "sound"})
    void theRepeatStandsWithItsTable(String name) throws IOException {
        assertThat(pages(name)).filteredOn(page -> page.contains("A fair repeat that can see")).singleElement().asString()
                .contains("Decides by").contains("Sequence");
    }

    @ParameterizedTest
    @CsvSource({"inlet, 2", "silent, 0"})
    void everyPairOfCurvesIsDrawn(String name, int pairs) throws IOException {
        AuditAnswer answer = AuditPublication.audit(Path.of("demo-data/published", name + ".json"));
        String html = AuditReport.html(answer, AuditPublication.repeat(answer));

        assertThat(html.split("<title[^>]*>Published curves of ", -1)).hasSize(pairs + 1);
    }

    private static List<String> pages(String name) throws IOException {
        AuditAnswer answer = AuditPublication.audit(Path.of("demo-data/published", name + ".json"));
        return pages(AuditReport.pdf(answer, AuditPublication.repeat(answer), Paper.A4).bytes());
    }

    private static List<String> pages(byte[] paper) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(paper)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
    }
}

package fairpull.app.usecase.keeping;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.chart.PrintedPages;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.print.DocFlavor;
import javax.print.StreamPrintServiceFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The run sheet sent to a printer that writes PostScript, which needs no device; compared with the PDF of the same sheet. */
class PrintedSheetTest {
    private static final Path TEST = Path.of("plans/electric-pump");
    private static final SheetRequest REQUEST = new SheetRequest("a4", "metric", "", "");

    @TempDir
    private Path folder;

    @Test
    void aPrinterGetsEveryPageOfThePdfInItsSize() throws Exception {
        Path file = folder.resolve("sheet.pdf");
        WriteSheet.write(TEST, file, REQUEST);
        ByteArrayOutputStream paper = new ByteArrayOutputStream();
        try (PrintedPages pages = WriteSheet.pages(TEST, REQUEST); PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            PrinterJob printer = PrinterJob.getPrinterJob();
            printer.setPrintService(StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                    DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0].getPrintService(paper));
            printer.setPageable(pages);
            printer.print();
            // ISO 216: A4 is 210 mm by 297 mm; a point is 1/72 of an inch of 25.4 mm
            assertThat(pages.getPageFormat(0).getWidth()).isCloseTo(210 / 25.4 * 72, org.assertj.core.api.Assertions.within(1.0));
            assertThat(pages.getPageFormat(0).getHeight()).isCloseTo(297 / 25.4 * 72, org.assertj.core.api.Assertions.within(1.0));
            assertThat(pagesOf(paper)).isEqualTo(pdf.getNumberOfPages());
        }
        assertThat(paper.size()).isGreaterThan(20_000);
    }

    private static int pagesOf(ByteArrayOutputStream postScript) {
        Matcher page = Pattern.compile("%%Page: ").matcher(postScript.toString(StandardCharsets.ISO_8859_1));
        return (int) page.results().count();
    }
}

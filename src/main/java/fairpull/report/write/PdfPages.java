package fairpull.report.write;

import fairpull.report.chart.PrintedPages;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** The pages of a PDF for a printer: what is printed is what the file shows. */
public final class PdfPages implements PrintedPages {
    private final PDDocument document;
    private final PDFPageable pages;

    /** The pages of a PDF of ours. */
    public PdfPages(HtmlToPdf.Pdf pdf) {
        try {
            document = Loader.loadPDF(pdf.bytes());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        pages = new PDFPageable(document);
    }

    @Override
    public int getNumberOfPages() {
        return pages.getNumberOfPages();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        return pages.getPageFormat(page);
    }

    @Override
    public Printable getPrintable(int page) {
        return pages.getPrintable(page);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}

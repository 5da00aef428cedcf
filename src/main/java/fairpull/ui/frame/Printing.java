package fairpull.ui.frame;

import fairpull.app.task.Job;
import fairpull.report.chart.PrintedPages;
import fairpull.ui.theme.Words;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Prints pages with the dialogue of the system, which asks for the printer. */
final class Printing {
    private final Consumer<String> saying;

    /** Printing that says in words how it went. */
    Printing(Consumer<String> saying) {
        this.saying = saying;
    }

    /** {@return whether the system knows a printer; asks the system, so not to be called on the thread of a window} */
    static boolean isPossible() {
        return PrinterJob.lookupPrintServices().length > 0;
    }

    /** Asks for a printer and prints beside the window's thread. */
    void print(PrintedPages pages, String name) {
        PrinterJob printer = PrinterJob.getPrinterJob();
        printer.setJobName(name);
        printer.setPageable(pages);
        if (!printer.printDialog()) {
            pages.close();
            return;
        }
        Job.start(progress -> {
            try (pages) {
                printer.print();
                return Words.of("print.done", pages.getNumberOfPages(), printer.getPrintService().getName());
            } catch (PrinterException failed) {
                return Words.of("print.failed", String.valueOf(failed.getMessage()));
            }
        }, SwingUtilities::invokeLater, share -> { }, ended -> ended.tell(saying,
                fault -> saying.accept(Words.of("print.failed", fault))));
    }
}

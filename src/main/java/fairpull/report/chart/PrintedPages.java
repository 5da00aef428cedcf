package fairpull.report.chart;

import java.awt.print.Pageable;

/** Pages that a printer paints, with their sizes; to be closed once they are printed. */
public interface PrintedPages extends Pageable, AutoCloseable {
    @Override
    void close();
}

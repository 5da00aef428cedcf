package fairpull.ui.page.finding;

import fairpull.app.usecase.judging.KeepReport;
import java.awt.Component;
import javax.swing.SwingUtilities;

/** Has a finding written: asks where to, and says what came of it. */
public interface ReportWriter {
    /** Writes the finding; {@code seen} is the stamp of the test when what is in view was judged. */
    void write(KeepReport.Kind kind, String seen);

    /** {@return who writes for a component: the nearest one around it} */
    static ReportWriter around(Component place) {
        if (SwingUtilities.getAncestorOfClass(ReportWriter.class, place) instanceof ReportWriter writer) {
            return writer;
        }
        throw new IllegalArgumentException("nobody writes for " + place.getName());
    }
}

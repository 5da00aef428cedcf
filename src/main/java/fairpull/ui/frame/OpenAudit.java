package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Recovery;
import fairpull.app.document.Unsaved;
import fairpull.ui.form.FaultWords;
import fairpull.ui.page.audit.Auditing;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.function.Function;
import javax.swing.SwingUtilities;

/** An audit that is open: its publication, what shows it, and the frame around it. */
final class OpenAudit {
    private final AuditDocument document;
    private final Windows windows;
    private final Auditing auditing;
    private final AuditPane pane;
    private final AuditActions actions;
    private final Recovery recovery;
    private final Shell shell;

    OpenAudit(AuditDocument document, Windows windows, int number, Function<OpenAudit, Shell> framing) {
        this.document = document;
        this.windows = windows;
        auditing = new Auditing(document);
        actions = new AuditActions(this, windows);
        pane = new AuditPane(document, windows.settings(), auditing, actions);
        recovery = Recovery.of(windows.settings(), document, new Recovery.Watch(number, SwingUtilities::invokeLater,
                fault -> pane.say(Words.of("recovery.failed", FaultWords.of(fault)))));
        pane.onRepeat(actions::repeat);
        pane.onReport(actions::report);
        pane.setTransferHandler(new Drops(file -> pane.take(file, actions::open)));
        shell = framing.apply(this);
    }

    AuditDocument document() {
        return document;
    }

    Windows windows() {
        return windows;
    }

    Auditing auditing() {
        return auditing;
    }

    AuditPane pane() {
        return pane;
    }

    AuditActions actions() {
        return actions;
    }

    Shell shell() {
        return shell;
    }

    /** {@return whether it is the publication of a file, however that is written} */
    boolean isOf(Path file) {
        return document.file().map(OpenAudit::plain).filter(plain(file)::equals).isPresent();
    }

    private static Path plain(Path file) {
        return file.toAbsolutePath().normalize();
    }

    /** Says that what is shown was found after the program had been ended from outside, and takes it into its own keeping. */
    void tellRecovered(Unsaved.Found<AuditDocument> found) {
        recovery.takeOver(found);
        pane.say(Words.of("recovered"));
    }

    /** Ends it; what was not saved is given up. */
    void end() {
        recovery.end();
        auditing.end();
        windows.closed(this);
        pane.end();
        shell.dispose();
    }
}

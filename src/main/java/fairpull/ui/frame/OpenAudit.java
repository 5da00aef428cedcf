package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.ui.page.audit.Auditing;
import java.nio.file.Path;
import java.util.function.Function;

/** An audit that is open: its publication, what shows it, and the frame around it. */
final class OpenAudit {
    private final AuditDocument document;
    private final Windows windows;
    private final Auditing auditing;
    private final AuditPane pane;
    private final AuditActions actions;
    private final Shell shell;

    OpenAudit(AuditDocument document, Windows windows, Function<OpenAudit, Shell> framing) {
        this.document = document;
        this.windows = windows;
        auditing = new Auditing(document);
        actions = new AuditActions(this, windows);
        pane = new AuditPane(document, windows.settings(), auditing, actions);
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

    /** Ends it; what was not saved is given up. */
    void end() {
        auditing.end();
        windows.closed(this);
        pane.end();
        shell.dispose();
    }
}

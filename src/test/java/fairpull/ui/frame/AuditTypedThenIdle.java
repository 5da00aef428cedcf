package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.usecase.auditing.KeepAudit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Somebody who types half a publication, says so and leaves it alone until the process is ended from outside. Needs no display. */
final class AuditTypedThenIdle {
    static final String TYPED = "typed";
    private static final int LONGEST_S = 120;

    private AuditTypedThenIdle() {
    }

    /** Given the folder of the settings and, where one is opened, the file of a publication; then name and text of each field, in turn. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        AuditDocument document = arguments[1].isEmpty() ? AuditDocument.blank() : KeepAudit.open(Path.of(arguments[1]));
        AuditSeat seat = new AuditSeat(Path.of(arguments[0]), document);
        for (int field = 2; field < arguments.length; field += 2) {
            seat.type(arguments[field], arguments[field + 1]);
        }
        System.out.println(TYPED);
        TimeUnit.SECONDS.sleep(LONGEST_S);
    }
}

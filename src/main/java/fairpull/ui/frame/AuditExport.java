package fairpull.ui.frame;

import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.domain.audit.AuditAnswer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** What an audit can be written as: the same bytes as the command writes. */
enum AuditExport {
    HTML(".html") {
        @Override
        void write(AuditAnswer answer, Path file) throws IOException {
            AuditPublication.write(answer, AuditPublication.repeat(answer), Optional.of(file), Optional.empty());
        }
    },
    PDF(".pdf") {
        @Override
        void write(AuditAnswer answer, Path file) throws IOException {
            AuditPublication.write(answer, AuditPublication.repeat(answer), Optional.empty(), Optional.of(file));
        }
    },
    JSON("-audit.json") {
        @Override
        void write(AuditAnswer answer, Path file) throws IOException {
            KeepAudit.json(answer, file);
        }
    };

    private final String ending;

    AuditExport(String ending) {
        this.ending = ending;
    }

    /** {@return what the name of such a file ends with} */
    String ending() {
        return ending;
    }

    /** Writes it, in place of another file of that name. */
    abstract void write(AuditAnswer answer, Path file) throws IOException;
}

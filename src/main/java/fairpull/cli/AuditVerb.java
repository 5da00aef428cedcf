package fairpull.cli;

import fairpull.app.usecase.AuditPublication;
import fairpull.app.usecase.UsageException;
import fairpull.domain.audit.AuditAnswer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code audit}: what published figures can and cannot show. */
@Command(name = "audit",
        description = "Says what a published comparison can and cannot show: every claim graded with the reason and the figures behind it, "
                + "chance alone, the scatter at which it tips, what is not disclosed by how much it could matter, and the fair repeat.",
        footer = {"  fairpull audit --template", "  fairpull audit demo-data/published/battery-trial-1953.json",
            "  fairpull audit demo-data/published/sound.json --html audit.html --plan fair-repeat"})
final class AuditVerb extends Verb {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "The publication; --template prints an empty one.")
    private Path file;

    @Option(names = "--template", description = "Print an empty publication to fill in.")
    private boolean template;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the audit as HTML too.")
    private Path html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the audit as PDF too.")
    private Path pdf;

    @Option(names = "--plan", paramLabel = "FOLDER", description = "Write the fair repeat as a test into a new folder.")
    private Path plan;

    @Override
    protected void work() throws IOException {
        if (template == (file != null)) {
            throw new UsageException("audit", template ? "--template and a file contradict each other; give one of them"
                    : "give the file of a publication, or --template for an empty one");
        }
        if (template) {
            answer(AuditPublication.template());
            return;
        }
        AuditAnswer audited = AuditPublication.audit(file);
        if (plan != null) {
            AuditPublication.plan(audited, plan);
        }
        AuditPublication.write(audited, Optional.ofNullable(html), Optional.ofNullable(pdf));
        answer(AuditPublication.said(audited));
    }
}

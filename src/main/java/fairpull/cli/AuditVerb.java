package fairpull.cli;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.auditing.AuditPublication;
import fairpull.app.usecase.planning.KnownScatter;
import fairpull.domain.InputException;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.StatedScatter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code audit}: what published figures can and cannot show. */
@Command(name = "audit",
        description = "Says what a published comparison can and cannot show: every claim graded with the reason and the figures behind it, "
                + "chance alone, the scatter at which it tips, what else moves the figures, what figures and curves "
                + "show against each other, what is not disclosed by how much it could matter, and the fair repeat.",
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

    @Option(names = "--pull-scatter", paramLabel = "X",
            description = "Scatter of pulls that is known of the rig, a standard deviation such as 0.5%% or 1.2hp, in place of the assumed "
                    + "range and of what the file states.")
    private String pullScatter;

    @Option(names = "--pull-df", paramLabel = "N", description = "Degrees of freedom behind it.")
    private String pullDf;

    @Option(names = "--refit-scatter", paramLabel = "X", description = "Scatter that refitting adds, likewise.")
    private String refitScatter;

    @Option(names = "--refit-df", paramLabel = "N", description = "Degrees of freedom behind it.")
    private String refitDf;

    @Option(names = "--record", paramLabel = "FILE", description = "Take the scatter from the file of a rig record instead.")
    private Path record;

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
        AuditAnswer audited = AuditPublication.audit(file, scatter());
        Repeat repeat = AuditPublication.repeat(audited);
        Optional<InputException> unplanned = plan == null ? Optional.empty() : AuditPublication.plan(repeat, plan);
        AuditPublication.write(audited, repeat, Optional.ofNullable(html), Optional.ofNullable(pdf));
        answer(AuditPublication.said(audited, repeat));
        if (unplanned.isPresent()) {
            throw unplanned.get();
        }
    }

    private Optional<StatedScatter> scatter() throws IOException {
        boolean typed = pullScatter != null || pullDf != null || refitScatter != null || refitDf != null;
        if (record != null) {
            if (typed) {
                throw new UsageException("--record", "and typed scatter contradict each other; give one of them");
            }
            return Optional.of(KnownScatter.ofRecord(record));
        }
        if (!typed) {
            return Optional.empty();
        }
        if (pullScatter == null || refitScatter == null && refitDf != null) {
            throw new UsageException(pullScatter == null ? "--pull-scatter" : "--refit-scatter", "is missing; such as 0.5%");
        }
        Optional<StatedScatter.Layer> refit = Optional.ofNullable(refitScatter)
                .map(known -> KnownScatter.layer("--refit-scatter", known, freedom("--refit-df", refitDf)));
        StatedScatter.Layer pull = KnownScatter.layer("--pull-scatter", pullScatter, freedom("--pull-df", pullDf));
        return Optional.of(KnownScatter.of(pull, refit));
    }

    private static OptionalDouble freedom(String option, String typed) {
        return typed == null ? OptionalDouble.empty() : OptionalDouble.of(Numbers.positive(option, typed));
    }
}

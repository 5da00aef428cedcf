package fairpull.app.usecase.auditing;

import fairpull.app.usecase.Answer;
import fairpull.app.usecase.UsageException;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.StatedScatter;
import fairpull.engine.audit.Audit;
import fairpull.io.folder.Bounded;
import fairpull.io.folder.Outputs;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.AuditJson;
import fairpull.io.json.PublicationJson;
import fairpull.report.wording.RepeatWords;
import fairpull.report.wording.UndisclosedWords;
import fairpull.report.write.AuditReport;
import fairpull.report.write.Paper;
import fairpull.report.write.TextAudit;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Audits a published comparison. */
public final class AuditPublication {
    private static final long MOST_BYTES = 1 << 20;
    private static final String TEMPLATE = "/fairpull/audit/publication.json";

    private AuditPublication() {
    }

    /** {@return what the publication in a file can and cannot show} */
    public static AuditAnswer audit(Path file) throws IOException {
        return audit(file, Optional.empty());
    }

    /** {@return what the publication in a file can and cannot show; a scatter that is known takes the place of what it states} */
    public static AuditAnswer audit(Path file, Optional<StatedScatter> known) throws IOException {
        Publication publication = read(file);
        return audit(known.isEmpty() ? publication : publication.with(publication.procedure().withScatter(known)),
                file.toAbsolutePath().getParent());
    }

    /** {@return what a publication can and cannot show; the files of its curves lie in a folder} */
    public static AuditAnswer audit(Publication publication, Path folder) throws IOException {
        return Audit.of(publication, PublishedCurves.of(publication, folder));
    }

    /** {@return the publication in a file} */
    public static Publication read(Path file) throws IOException {
        return PublicationJson.read(Bounded.text(file, MOST_BYTES), file.toString());
    }

    /** Writes a publication to a file. */
    public static void save(Publication publication, Path file) throws IOException {
        put(Map.of(file, PublicationJson.write(publication).getBytes(StandardCharsets.UTF_8)));
    }

    /** {@return the answer and its fair repeat, for people and programs} */
    public static Answer said(AuditAnswer answer, Repeat repeat) {
        return new Answer(TextAudit.text(answer, repeat), AuditJson.document(answer, repeat, UndisclosedWords::item));
    }

    /** {@return the fair repeat of what was audited, a search over many days; its plan can be opened as a new test} */
    public static Repeat repeat(AuditAnswer answer) {
        return FairRepeat.of(answer);
    }

    /**
     * Writes the fair repeat as a test into a folder that holds none.
     *
     * @return where there is no fair repeat, and nothing was written, why; the audit says what would help
     */
    public static Optional<InputException> plan(Repeat repeat, Path folder) throws IOException {
        if (repeat.outcome() != Repeat.Outcome.FOUND) {
            return Optional.of(new InputException(Place.none(), RepeatWords.heading(repeat),
                    "no test was written; the audit says what would help"));
        }
        TestFolder.create(folder, repeat.plan().orElseThrow());
        return Optional.empty();
    }

    /** {@return an empty publication to fill in} */
    public static Answer template() throws IOException {
        try (InputStream in = AuditPublication.class.getResourceAsStream(TEMPLATE)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new Answer(text, text);
        }
    }

    /** Writes the report of an answer and its fair repeat; nothing before everything is made. */
    public static void write(AuditAnswer answer, Repeat repeat, Optional<Path> html, Optional<Path> pdf) throws IOException {
        Optional<byte[]> page = html.map(file -> AuditReport.html(answer, repeat).getBytes(StandardCharsets.UTF_8));
        Optional<byte[]> paper = pdf.map(file -> AuditReport.pdf(answer, repeat, Paper.A4).bytes());
        Map<Path, byte[]> files = new LinkedHashMap<>();
        html.ifPresent(file -> files.put(file, page.orElseThrow()));
        pdf.ifPresent(file -> files.put(file, paper.orElseThrow()));
        put(files);
    }

    private static void put(Map<Path, byte[]> files) throws IOException {
        files.keySet().stream().filter(Files::isDirectory).findFirst().ifPresent(folder -> {
            throw new UsageException("audit", folder + " is a folder; name a file in it");
        });
        Outputs.write(files);
    }
}

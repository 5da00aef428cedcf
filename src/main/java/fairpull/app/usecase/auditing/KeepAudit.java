package fairpull.app.usecase.auditing;

import fairpull.app.document.AuditDocument;
import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Repeat;
import fairpull.domain.plan.Plan;
import fairpull.io.folder.AtomicWrite;
import fairpull.io.json.PublicationJson;
import fairpull.report.wording.RepeatWords;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Brings a publication from disk into a document and its audit back, for the window. */
public final class KeepAudit {
    /** The publications that come with the program: three invented ones and a trial of 1953. */
    public static final List<String> EXAMPLES = List.of("silent", "sound", "inlet", "battery-trial-1953");
    private static final String WITH_EXAMPLES = "/fairpull/audit/published/";

    private KeepAudit() {
    }

    /** {@return whether a path is that of a file such as publications lie in, and not of a test} */
    public static boolean isFile(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(".json") && !path.endsWith("plan.json") && Files.isRegularFile(path);
    }

    /** {@return the publication in a file} */
    public static AuditDocument open(Path file) throws IOException {
        return AuditDocument.of(file, AuditPublication.read(file));
    }

    /** {@return a publication that comes with the program; it lies in no file, so its curves are in it, point by point} */
    public static AuditDocument example(String name) throws IOException {
        String file = name + ".json";
        Publication publication = PublicationJson.read(new String(bytes(file), StandardCharsets.UTF_8), file);
        Path folder = Files.createTempDirectory("fairpull-example");
        try {
            for (String table : tables(publication)) {
                Files.write(folder.resolve(table), bytes(table));
            }
            return AuditDocument.of(PointsOfTables.of(publication, folder));
        } finally {
            for (String table : tables(publication)) {
                Files.deleteIfExists(folder.resolve(table));
            }
            Files.delete(folder);
        }
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = KeepAudit.class.getResourceAsStream(WITH_EXAMPLES + file)) {
            return in.readAllBytes();
        }
    }

    private static List<String> tables(Publication publication) {
        return publication.curves().stream().flatMap(curves -> Stream.of(curves.before(), curves.after()))
                .filter(CurveSource.Table.class::isInstance).map(source -> ((CurveSource.Table) source).name()).distinct().toList();
    }

    /**
     * The fair repeat of what was audited.
     *
     * @param words what it would take, or why there is none
     * @param plan of it; empty where there is none
     */
    public record RepeatPlan(String words, Optional<Plan> plan) {
    }

    /** {@return the fair repeat of what was audited} */
    public static RepeatPlan repeat(AuditAnswer answer) {
        Repeat repeat = AuditPublication.repeat(answer);
        String words = RepeatWords.heading(repeat) + ". " + RepeatWords.paragraph(repeat);
        return new RepeatPlan(words, repeat.plan());
    }

    /** Writes what an audit answers as JSON, in place of another file of that name. */
    public static void json(AuditAnswer answer, Path file) throws IOException {
        AtomicWrite.text(file, AuditPublication.said(answer, AuditPublication.repeat(answer)).json());
    }
}

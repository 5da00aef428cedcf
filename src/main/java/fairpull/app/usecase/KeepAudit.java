package fairpull.app.usecase;

import fairpull.app.document.AuditDocument;
import fairpull.domain.audit.AuditAnswer;
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

/** Brings a publication from disk into a document and its audit back, for the window. */
public final class KeepAudit {
    /** The publications that come with the program: two invented ones and a trial of 1953. */
    public static final List<String> EXAMPLES = List.of("silent", "sound", "battery-trial-1953");

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

    /** {@return a publication that comes with the program} */
    public static AuditDocument example(String name) throws IOException {
        String file = "/fairpull/audit/published/" + name + ".json";
        try (InputStream in = KeepAudit.class.getResourceAsStream(file)) {
            return AuditDocument.of(PublicationJson.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), file));
        }
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
        AtomicWrite.text(file, AuditPublication.said(answer).json());
    }
}

package fairpull.app.document;

import fairpull.domain.InputException;
import fairpull.domain.audit.Publication;
import fairpull.domain.plan.Plan;
import fairpull.io.folder.TestFolder;
import fairpull.io.json.DraftJson;
import fairpull.io.json.PlanJson;
import fairpull.io.json.PublicationJson;
import fairpull.io.settings.UserFolder;
import fairpull.io.settings.UserFolder.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Edits that were never saved, of windows that ended without saying so.
 *
 * @param tests those of tests
 * @param audits those of publications
 */
public record Unsaved(List<Found<Document>> tests, List<Found<AuditDocument>> audits) {
    /** Stands for the file of a publication in the folder that holds its curves while it has none. */
    static final String HELD = "publication.json";
    private static final long MOST_BYTES = 16L << 20;

    /** Takes copies of the lists. */
    public Unsaved {
        tests = List.copyOf(tests);
        audits = List.copyOf(audits);
    }

    /**
     * Edits of one window.
     *
     * @param id of their file
     * @param document a document that holds them
     */
    public record Found<D>(String id, D document) {
    }

    /** {@return that there are none} */
    public static Unsaved none() {
        return new Unsaved(List.of(), List.of());
    }

    /** {@return whether there are none} */
    public boolean isEmpty() {
        return tests.isEmpty() && audits.isEmpty();
    }

    /** {@return what is found in the folder of the settings; what was saved all the same is forgotten} */
    public static Unsaved in(Settings settings) throws IOException {
        return new Unsaved(found(settings.folder(), Kind.PLAN, Unsaved::test, Document::isChanged),
                found(settings.folder(), Kind.PUBLICATION, kept -> audit(settings.folder(), kept), AuditDocument::isChanged));
    }

    /** Makes a document of edits that were kept. */
    private interface Reading<D> {
        D read(UserFolder.Recovered kept);
    }

    /** A text that cannot be read any more is as good as none; it is never a reason not to start. */
    private static <D> List<Found<D>> found(UserFolder folder, Kind kind, Reading<D> reading, Predicate<D> isChanged) throws IOException {
        List<Found<D>> found = new ArrayList<>();
        for (UserFolder.Recovered kept : folder.recoverable(kind)) {
            try {
                D document = reading.read(kept);
                if (isChanged.test(document)) {
                    found.add(new Found<>(kept.id(), document));
                } else {
                    folder.forget(kept.id());
                }
            } catch (InputException | IllegalArgumentException unreadable) {
                continue;
            }
        }
        return found;
    }

    /** Edits of a test that is sealed are an amendment that was never written. */
    private static Document test(UserFolder.Recovered kept) {
        Plan plan = PlanJson.read(kept.text(), kept.id());
        try {
            if (kept.where().isPresent()) {
                TestFolder.Content content = TestFolder.open(kept.where().get()).read();
                if (content.isSealed() && content.seal().isPresent()) {
                    return Document.recoveredAmendment(kept.where().get(), content.plan(), content.seal().get().code(), plan);
                }
                return Document.recovered(kept.where(), Optional.of(content.plan()), plan);
            }
        } catch (IOException | InputException gone) {
            // the edits are shown all the same; where they can be kept is found out when they are saved
        }
        return Document.recovered(kept.where(), Optional.empty(), plan);
    }

    private static AuditDocument audit(UserFolder folder, UserFolder.Recovered kept) {
        Optional<Path> held = kept.where().map(Path::getParent).filter(folder::isHeld);
        if (held.isPresent()) {
            AuditDocument document = AuditDocument.recovered(Optional.empty(), Optional.empty(), DraftJson.read(kept.text(), kept.id()));
            document.hold(held.get());
            return document;
        }
        return AuditDocument.recovered(kept.where(), kept.where().flatMap(Unsaved::saved), DraftJson.read(kept.text(), kept.id()));
    }

    private static Optional<Publication> saved(Path file) {
        try {
            return Files.size(file) > MOST_BYTES ? Optional.empty()
                    : Optional.of(PublicationJson.read(Files.readString(file), file.toString()));
        } catch (IOException | InputException gone) {
            return Optional.empty();
        }
    }
}

package fairpull.ui.page.audit;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.PublicationDraft;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * What a page of an audit stands on: the document that it shows, and where its edits and words go.
 *
 * @param document the publication
 * @param settings what is remembered
 * @param auditing how its claims stand
 * @param opening opens other publications in its place
 * @param words says something in the line beside the path; empty takes it away
 */
public record AuditDesk(AuditDocument document, Settings settings, Auditing auditing, Opening opening, Consumer<String> words) {
    /** What needs the window around the pages. */
    public interface Opening {
        /** Asks for the file of a publication and opens it. */
        void choose();

        /** Opens a publication that comes with the program. */
        void example(String name);

        /** Asks for a file; {@code key} names what for. */
        void choose(String key, Consumer<Path> then);

        /** Goes on with the file beside which curves are put; of one that lies in none, with a name in a folder that holds them. */
        void beside(Consumer<Path> then);
    }

    PublicationDraft draft() {
        return document.draft();
    }

    /**
     * Sends an edit of a field.
     *
     * @param key of its label, which undo says
     * @throws IllegalArgumentException if there is no such publication, in words to be shown beside the field
     */
    void typed(String key, String field, UnaryOperator<PublicationDraft> change) {
        document.edit(AuditTyping.lowered(Words.of(key)), field, change);
        words.accept("");
    }

    /** The same of a field of the procedure. */
    void typed(String key, UnaryOperator<Procedure> change) {
        typed(key, key, draft -> draft.with(change.apply(draft.procedure())));
    }

    /** Sends an edit that has no field to complain beside; what cannot be is said in the line beside the path. */
    void edit(String key, UnaryOperator<PublicationDraft> change) {
        try {
            typed(key, "", change);
        } catch (IllegalArgumentException impossible) {
            words.accept(impossible.getMessage());
        }
    }
}

package fairpull.ui.page;

import fairpull.app.document.Document;
import fairpull.app.document.Edit;
import fairpull.app.document.Settings;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.util.function.Consumer;

/**
 * What a page stands on: the document that it shows, and where its edits and words go.
 *
 * @param document the test
 * @param settings what is remembered
 * @param strip the day strip, always in view
 * @param words says something in the line under the strip; empty takes it away
 * @param pages brings a page into view, by its key
 */
public record Desk(Document document, Settings settings, DayStripView strip, Consumer<String> words, Consumer<String> pages) {

    /**
     * Sends an edit of a field.
     *
     * @throws IllegalArgumentException if there is no such plan, or it is sealed, in words to be shown beside the field
     */
    public void typed(Edit edit) {
        if (document.isFixed()) {
            throw new IllegalArgumentException(Words.of("amend.first"));
        }
        document.edit(edit);
        words.accept("");
    }

    /** Sends an edit that has no field to complain beside; what cannot be is said in the line under the strip. */
    public void edit(Edit edit) {
        try {
            typed(edit);
            document.settle();
        } catch (IllegalArgumentException impossible) {
            words.accept(impossible.getMessage());
        }
    }
}

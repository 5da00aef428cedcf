package fairpull.ui.page;

import fairpull.app.document.Document;
import fairpull.app.document.Edit;
import fairpull.app.document.Settings;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.nio.file.Path;
import java.util.Optional;
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
    private static final String BLIND = "blind";

    /** {@return what was kept of this test in the user's own folder, under a name; empty where nothing was} */
    public Optional<String> kept(String name) {
        return settings.find(nameOf(name)).filter(value -> !value.isEmpty());
    }

    /** Keeps something of this test, so that a restart finds it. */
    public void keep(String name, String value) {
        settings.set(nameOf(name), value);
    }

    private String nameOf(String name) {
        return "run." + name + ":" + document.folder().map(Desk::plain).orElse("");
    }

    private static String plain(Path folder) {
        return folder.toAbsolutePath().normalize().toString();
    }

    /** {@return whether the test in a folder is run blind} */
    public static boolean isBlind(Settings settings, Path folder) {
        return settings.find("run." + BLIND + ":" + plain(folder)).filter(value -> !value.isEmpty()).isPresent();
    }

    /** {@return whether part names and values are hidden from who runs the day} */
    public boolean isBlind() {
        return kept(BLIND).isPresent();
    }

    /** Hides part names and values, or shows them again. */
    public void blind(boolean now) {
        keep(BLIND, now ? "on" : "");
    }

    /** {@return why a page that shows part names or values cannot be reached now; empty where it can} */
    public Optional<String> blinded() {
        return isBlind() ? Optional.of(Words.of("blind.page")) : Optional.empty();
    }

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

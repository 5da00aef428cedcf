package fairpull.ui.page;

import java.nio.file.Path;
import javax.swing.JComponent;

/** One leaf of a path of pages. It shows a document and sends it edits; it holds nothing of its own that would be missed. */
public interface Leaf {
    /** {@return the key of its name in the words, such as {@code page.question}} */
    String key();

    /** {@return what is shown} */
    JComponent view();

    /** Shows the document as it stands; called when the page comes into view and after every change while it is. */
    void show();

    /** Takes a file that was dropped on the window; {@return whether the page has a use for it} */
    default boolean take(Path file) {
        return false;
    }

    /** {@return whether the page takes the room of the side panel as well} */
    default boolean isWide() {
        return false;
    }
}

package fairpull.ui.page;

import fairpull.app.document.Document;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;

/** A page that is made when it first comes into view: the window then shows without waiting for pages nobody looks at yet. */
public final class MadeWhenShown implements Page {
    private final String key;
    private final Desk desk;
    private final Function<Desk, Page> making;
    private final Function<Document, Optional<String>> notYet;
    private Page made;

    /** A page of a key, made on a desk when it is wanted. */
    public MadeWhenShown(String key, Desk desk, Function<Desk, Page> making) {
        this(key, desk, making, document -> Optional.empty());
    }

    /** The same, of a page that cannot always be reached; why not is known without making it. */
    public MadeWhenShown(String key, Desk desk, Function<Desk, Page> making, Function<Document, Optional<String>> notYet) {
        this.notYet = notYet;
        this.key = key;
        this.desk = desk;
        this.making = making;
    }

    private Page made() {
        if (made == null) {
            made = making.apply(desk);
        }
        return made;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public JComponent view() {
        return made().view();
    }

    @Override
    public void show() {
        made().show();
    }

    @Override
    public boolean take(Path file) {
        return made().take(file);
    }

    @Override
    public boolean isWide() {
        return made().isWide();
    }

    @Override
    public Optional<String> notYet(Document document) {
        return notYet.apply(document);
    }
}

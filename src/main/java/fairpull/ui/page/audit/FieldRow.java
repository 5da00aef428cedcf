package fairpull.ui.page.audit;

import fairpull.ui.form.Buttons;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import fairpull.ui.theme.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;

/** One of several rows of fields: they stand side by side, and what is wrong with one stands beneath all of them. */
abstract class FieldRow extends FoldingRow {
    /** The column of the button that takes a row away. */
    static final String BUTTON = "[36!, fill]";

    private final String removal;
    private final List<Entry<?>> entries = new ArrayList<>();
    private final List<Choice<?>> choices = new ArrayList<>();
    private final JButton remove;
    private int place;

    /**
     * A row without fields.
     *
     * @param columns of the layout, without that of the button
     * @param removal key of the words of the button that takes the row away
     */
    FieldRow(List<String> columns, String removal, Consumer<FieldRow> removing) {
        super(columns, BUTTON);
        this.removal = removal;
        remove = Buttons.of(removal, () -> removing.accept(this));
    }

    final <T> Entry<T> with(Entry<T> entry) {
        entries.add(entry);
        add(entry.field(), "growx, wmin 0");
        return entry;
    }

    final <T> Choice<T> with(Choice<T> choice) {
        choices.add(choice);
        add(choice.box(), "growx, wmin 0");
        return choice;
    }

    /** Ends the row: the button, and beneath the fields the places of their complaints. */
    final void end() {
        add(remove);
        entries.forEach(entry -> add(entry.complaint(), "spanx, growx, wmin 0, newline"));
    }

    final int place() {
        return place;
    }

    /** Takes a place among the rows, counted from 0. */
    final void standAt(int other) {
        place = other;
        entries.forEach(entry -> entry.inRow(other));
        choices.forEach(choice -> choice.inRow(other));
        remove.setName(removal + "." + other);
        remove.getAccessibleContext().setAccessibleName(Words.of("form.row", Words.of(removal + ".name"), other + 1));
    }

    /** {@return what edits of a field of this row have in common} */
    final String field(String key) {
        return key + "." + place;
    }

    /** Shows what the document holds at its place. */
    abstract void refresh();
}

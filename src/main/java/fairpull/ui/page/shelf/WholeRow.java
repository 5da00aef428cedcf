package fairpull.ui.page.shelf;

import fairpull.report.chart.Role;
import fairpull.ui.form.Prose;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.Look;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Beneath the list: where the chosen test lies, and what is wrong with it in full, which its row has no room for. */
final class WholeRow extends JPanel {
    private final transient RowWords words;
    private final Prose wrong = new Prose("", Role.B, Look.Type.BODY);
    private final Prose place = Prose.verbatim();

    WholeRow(RowWords words) {
        super(new MigLayout("insets 0, gap 0 2, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.words = words;
        setOpaque(false);
        wrong.setName("shelf.wrong");
        place.setName("shelf.where");
        add(wrong, "growx, wmin 0");
        add(place, "growx, wmin 0");
        tell(Optional.empty());
    }

    /** Tells of a row, or of none. */
    void tell(Optional<Row> row) {
        wrong.setText(row.map(words::wrong).orElse(""));
        place.setText(row.map(words::place).orElse(""));
        wrong.setVisible(!wrong.getText().isEmpty());
        place.setVisible(!place.getText().isEmpty());
    }
}

package fairpull.ui.page.audit;

import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Box;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A card of rows of fields under heads of columns, with a button that adds a row. */
abstract class RowsCard extends Card {
    private final List<FieldRow> rows = new ArrayList<>();
    private final JButton adding;
    private final JPanel place = new JPanel(new MigLayout("insets 0, gap 0 6, fillx, wrap 1", "[grow, fill]"));

    /**
     * A card.
     *
     * @param key of its words: {@code .head}, {@code .about} and {@code .add}
     * @param columns of the layout of its rows
     * @param heads keys of the heads of the columns
     */
    RowsCard(String key, List<String> columns, List<String> heads) {
        super(Words.of(key + ".head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        add(Prose.small(Words.of(key + ".about")), "growx, wmin 0");
        place.setOpaque(false);
        FoldingRow line = new FoldingRow(columns, FieldRow.BUTTON);
        heads.forEach(head -> line.add(new Line(Words.of(head), Role.SOFT, Look.Type.SMALL), "growx, wmin 0"));
        line.add(Box.createRigidArea(new Dimension(0, 0)));
        place.add(line, "growx, wmin 0");
        add(place, "growx, wmin 0");
        adding = Buttons.of(key + ".add", this::another);
        add(adding, "growx 0");
    }

    /** Adds another one to the document. */
    abstract void another();

    /** {@return a row that shows one of them} */
    abstract FieldRow made();

    /**
     * Takes a row away before its one is taken from the document: what is typed in the others stays in them. A key that is pressed once
     * more must not take the next one away too.
     */
    final void forget(FieldRow row) {
        adding.requestFocusInWindow();
        rows.remove(row);
        place.remove(row);
        renumber();
    }

    /** Shows so many rows as the document holds them. */
    final void refresh(int count) {
        boolean other = count != rows.size();
        while (rows.size() < count) {
            FieldRow row = made();
            rows.add(row);
            place.add(row, "growx, wmin 0");
        }
        while (rows.size() > count) {
            place.remove(rows.remove(rows.size() - 1));
        }
        if (other) {
            renumber();
        }
        rows.forEach(FieldRow::refresh);
    }

    private void renumber() {
        for (int number = 0; number < rows.size(); number++) {
            rows.get(number).standAt(number);
        }
        revalidate();
        repaint();
    }
}

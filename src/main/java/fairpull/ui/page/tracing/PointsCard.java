package fairpull.ui.page.tracing;

import fairpull.app.usecase.tracing.TraceTable;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;

/** The points of the curve at hand as a table; what is chosen in it is chosen in the picture. */
final class PointsCard extends Card {
    private final transient Bench bench;
    private final Model model = new Model();
    private final JTable table = new JTable(model);
    private final JButton delete;
    private boolean showing;

    PointsCard(Bench bench) {
        super(Words.of("tracing.table.head"), new MigLayout("insets 16, gap 8 6, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        this.bench = bench;
        table.setName("tracing.table");
        table.getAccessibleContext().setAccessibleName(Words.of("tracing.table.head"));
        table.setToolTipText(Words.tip(Words.of("tracing.table.tip")));
        table.setPreferredScrollableViewportSize(new Dimension(300, 90));
        table.getTableHeader().setReorderingAllowed(false);
        table.getSelectionModel().addListSelectionListener(event -> choose());
        table.getInputMap().put(KeyStroke.getKeyStroke("DELETE"), "delete");
        table.getActionMap().put("delete", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                delete();
            }
        });
        add(new JScrollPane(table), "grow, hmin 60, wmin 0");
        delete = Buttons.of("tracing.delete", this::delete);
        add(delete, "growx 0");
        bench.listen(this::refresh);
    }

    private void choose() {
        if (!showing && !table.getSelectionModel().getValueIsAdjusting()) {
            int[] rows = table.getSelectedRows();
            bench.choose(rows.length == 1 ? OptionalInt.of(rows[0]) : OptionalInt.empty());
            delete.setEnabled(rows.length > 0);
        }
    }

    private void delete() {
        bench.delete(Arrays.stream(table.getSelectedRows()).boxed().toList());
    }

    private void refresh() {
        showing = true;
        model.show(bench.document().tracing().map(tracing -> TraceTable.of(tracing, bench.part()))
                .orElse(new TraceTable.Texts(List.of("x", "±", "y", "±", "how"), List.of())));
        if (bench.chosen().isPresent()) {
            int row = bench.chosen().getAsInt();
            table.setRowSelectionInterval(row, row);
            table.scrollRectToVisible(table.getCellRect(row, 0, true));
        } else if (table.getSelectedRowCount() == 1) {
            table.clearSelection();
        }
        showing = false;
        delete.setEnabled(table.getSelectedRowCount() > 0);
        head(Words.of("tracing.table.count", bench.part(), model.getRowCount()));
    }

    private static final class Model extends AbstractTableModel {
        private transient TraceTable.Texts texts = new TraceTable.Texts(List.of("x", "±", "y", "±", "how"), List.of());

        void show(TraceTable.Texts next) {
            if (next.equals(texts)) {
                return;
            }
            boolean renamed = !next.heads().equals(texts.heads());
            texts = next;
            if (renamed) {
                fireTableStructureChanged();
            } else {
                fireTableDataChanged();
            }
        }

        @Override
        public int getRowCount() {
            return texts.rows().size();
        }

        @Override
        public int getColumnCount() {
            return texts.heads().size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.heads().get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            return LocalNumbers.shown(texts.rows().get(row).get(column));
        }
    }
}

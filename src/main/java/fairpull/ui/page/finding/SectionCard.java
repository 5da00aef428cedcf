package fairpull.ui.page.finding;

import fairpull.app.usecase.judging.FindingView.Answered;
import fairpull.app.usecase.judging.FindingView.Section;
import fairpull.report.chart.Chart;
import fairpull.report.chart.Role;
import fairpull.ui.form.Card;
import fairpull.ui.form.Fold;
import fairpull.ui.form.Prose;
import fairpull.ui.form.ScaledChart;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;
import net.miginfocom.swing.MigLayout;

/** A card of the report as a card of the window: words and charts at once, figures and methods one click away. */
public final class SectionCard extends Card {
    private static final int MOST_ROWS_SHOWN = 16;
    private static final int AIR = 12;

    private final String kind;
    private final Fold fold;

    /** A card that shows a section. */
    public SectionCard(Section section) {
        super("", new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        kind = section.kind();
        setName("finding." + kind);
        fold = new Fold(section.method() ? "finding.method" : "finding.figures", section.heading());
        boolean verdict = section.kind().equals("verdict");
        add(new Prose(section.heading(), section.kind().equals("alarm") ? Role.B : Role.INK,
                verdict ? Look.Type.VERDICT : Look.Type.HEAD), "growx, wmin 0");
        for (int place = 0; place < section.paragraphs().size(); place++) {
            boolean why = verdict && place == 0;
            put(section.method(), why ? new Prose(section.paragraphs().get(0), Role.INK, Look.Type.HEAD)
                    : Prose.body(section.paragraphs().get(place)));
        }
        for (Chart chart : section.charts()) {
            add(new ScaledChart(chart), "growx, wmin 0");
        }
        if (!section.caption().isEmpty()) {
            add(Prose.small(section.caption()), "growx, wmin 0");
        }
        if (!section.plainly().isEmpty()) {
            add(answers(section.plainly()), "growx, wmin 0");
        }
        if (!section.answers().isEmpty()) {
            put(section.method() || !section.plainly().isEmpty(), answers(section.answers()));
        }
        if (!section.table().isEmpty()) {
            put(true, table(section));
        }
        for (int step = 0; step < section.steps().size(); step++) {
            put(section.method(), Prose.body(step + 1 + ". " + section.steps().get(step)));
        }
        if (!fold.isEmpty()) {
            add(fold, "growx, wmin 0");
        }
    }

    private void put(boolean behind, JComponent part) {
        if (behind) {
            fold.put(part);
        } else {
            add(part, "growx, wmin 0");
        }
    }

    /** {@return the kind of the section} */
    String kind() {
        return kind;
    }

    /** Shows or hides what stands behind its words. */
    void open(boolean open) {
        fold.open(open);
    }

    private static JPanel answers(List<Answered> answers) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 16 6, fillx, wrap 2", "[0:28%:180, fill][grow, fill]"));
        panel.setOpaque(false);
        for (Answered answer : answers) {
            panel.add(new Prose(answer.head(), Role.INK, Look.Type.STRONG), "wmin 0, aligny top");
            panel.add(new Prose(answer.text(), Role.SOFT, Look.Type.BODY), "wmin 0, growx, aligny top");
        }
        return panel;
    }

    private static JScrollPane table(Section section) {
        Object[][] rows = section.table().stream().skip(1)
                .map(row -> row.stream().map(LocalNumbers::shown).toArray(Object[]::new)).toArray(Object[][]::new);
        JTable table = new JTable(new DefaultTableModel(rows, section.table().get(0).toArray()) {
            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        });
        DefaultTableCellRenderer right = new DefaultTableCellRenderer();
        right.setHorizontalAlignment(SwingConstants.RIGHT);
        for (int column = section.words(); column < table.getColumnCount(); column++) {
            table.getColumnModel().getColumn(column).setCellRenderer(right);
        }
        fit(table);
        table.getAccessibleContext().setAccessibleName(section.heading());
        JScrollPane scroll = new JScrollPane(table);
        int height = (Math.min(MOST_ROWS_SHOWN, rows.length) + 1) * table.getRowHeight() + 12;
        scroll.setPreferredSize(new Dimension(400, height));
        return scroll;
    }

    /** A column is as wide as its widest cell asks for; what is left over is shared. */
    private static void fit(JTable table) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            TableColumn place = table.getColumnModel().getColumn(column);
            int widest = table.getTableHeader().getDefaultRenderer().getTableCellRendererComponent(table, place.getHeaderValue(), false,
                    false, -1, column).getPreferredSize().width;
            for (int row = 0; row < table.getRowCount(); row++) {
                widest = Math.max(widest, table.prepareRenderer(table.getCellRenderer(row, column), row, column).getPreferredSize().width);
            }
            place.setPreferredWidth(widest + AIR);
        }
    }
}

package fairpull.ui.page.audit;

import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Publication.Values.Each;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Columns;
import fairpull.ui.form.Line;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.TransferHandler;
import net.miginfocom.swing.MigLayout;

/** The values behind a figure, where they were published one by one: typed into a small table or pasted out of a spreadsheet. */
final class ValuesCard extends Card {
    private static final int MOST_ROWS_SHOWN = 8;
    /** Wide enough at the usual size of type for two values with their units. */
    private static final int NARROWEST = 220;

    private final AuditDesk desk;
    private final ValuesTyped typed;
    private final ValuesTable table;
    private final JScrollPane around;
    private final Choice<String> figure;
    private final Choice<Optional<Each>> each;
    private final Choice<Boolean> paired;
    private final JButton clear;
    private final Line complaint = new Line(" ", Role.B, Look.Type.SMALL);

    ValuesCard(AuditDesk desk) {
        super(Words.of("audit.values.head"), new MigLayout("insets 20, gap 8 8, fillx, hidemode 3, wrap 1", "[grow, fill]"));
        this.desk = desk;
        typed = new ValuesTyped(desk);
        table = new ValuesTable(typed);
        figure = new Choice<>("audit.values.figure", List.of(), Function.identity(), this::turnTo);
        each = new Choice<>("audit.values.each", Stream.concat(Stream.of(Optional.<Each>empty()), Stream.of(Each.values())
                .map(Optional::of)).toList(), ValuesCard::words, typed::each);
        paired = new Choice<>("audit.values.paired", List.of(false, true), is -> Words.of("audit.values.paired." + is), typed::paired);
        clear = Buttons.of("audit.values.clear", typed::clear);
        around = new JScrollPane(table);
        around.setMinimumSize(new Dimension((int) Math.round(NARROWEST * Look.scale()), 0));
        add(Prose.small(Words.of("audit.values.about")), "growx, wmin 0");
        Columns sides = new Columns(16, "[grow 55, fill]", "[grow 45, fill]");
        sides.add(items());
        sides.add(around);
        add(sides, "growx, wmin 0");
        complaint.setName("audit.values.complaint");
        complaint.setVisible(false);
        add(complaint, "growx, wmin 0");
        typed.listen(this::refresh);
    }

    private JPanel items() {
        JPanel items = new JPanel(new MigLayout("insets 0, gap 8 8, fillx, wrap 2", "[pref!][160:200:, grow, fill]"));
        items.setOpaque(false);
        figure.addTo(items);
        each.addTo(items);
        paired.addTo(items);
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8 8"));
        buttons.setOpaque(false);
        buttons.add(Buttons.of("audit.values.paste", this::paste));
        buttons.add(clear);
        items.add(buttons, "skip 1");
        return items;
    }

    private static String words(Optional<Each> each) {
        return Words.of(each.map(of -> "audit.values.each." + of.name()).orElse("audit.undisclosed"));
    }

    private void turnTo(String name) {
        typed.turnTo(desk.draft().figures().stream().map(FigureDraft::name).toList().indexOf(name));
        refresh();
    }

    private void paste() {
        TransferHandler.getPasteAction().actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, "paste"));
    }

    void refresh() {
        boolean has = typed.has();
        setVisible(has);
        if (!has) {
            return;
        }
        figure.offer(desk.draft().figures().stream().map(FigureDraft::name).toList());
        figure.show(typed.figure().name());
        each.show(typed.values().each());
        paired.show(typed.values().paired());
        clear.setEnabled(typed.rows() > 0);
        table.refresh();
        String words = typed.complaint();
        complaint.setText(words.isEmpty() ? " " : Words.lines(LocalNumbers.shown(words)));
        complaint.setVisible(!words.isEmpty());
        int rows = Math.min(MOST_ROWS_SHOWN, table.getRowCount());
        around.setPreferredSize(new Dimension(260, table.getTableHeader().getPreferredSize().height + rows * table.getRowHeight() + 4));
        revalidate();
        repaint();
    }
}

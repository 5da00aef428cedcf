package fairpull.ui.page.limits;

import fairpull.app.document.RigEdits;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.page.Desk;
import fairpull.ui.theme.Words;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The checklist, one line a point. The cautions of the sheet stand besides and cannot be switched off. */
final class ChecklistCard extends Card {
    private static final String LINES = "\n";

    private final Desk desk;
    private final JTextArea points = new JTextArea(8, 40);

    ChecklistCard(Desk desk) {
        super(Words.of("checklist.head"), new MigLayout("insets 20, gap 8 8, fillx, wrap 1", "[grow, fill]"));
        this.desk = desk;
        add(Prose.small(Words.of("checklist.sub")), "growx, wmin 0");
        points.setName("checklist");
        points.setLineWrap(true);
        points.setWrapStyleWord(true);
        points.getAccessibleContext().setAccessibleName(Words.of("checklist.head"));
        points.setToolTipText(Words.tip(Words.of("checklist.tip")));
        points.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                send();
            }
        });
        add(new JScrollPane(points), "growx, wmin 0");
    }

    private void send() {
        List<String> typed = points.getText().lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
        if (!desk.document().isFixed() && !typed.equals(desk.document().plan().checklist())) {
            desk.edit(RigEdits.checklist(typed));
        }
    }

    void refresh() {
        String text = String.join(LINES, desk.document().plan().checklist());
        if (!points.isFocusOwner() && !points.getText().equals(text)) {
            points.setText(text);
            points.setCaretPosition(0);
        }
        points.setEnabled(!desk.document().isFixed());
    }
}

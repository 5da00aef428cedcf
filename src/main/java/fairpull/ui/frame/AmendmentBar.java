package fairpull.ui.frame;

import fairpull.app.document.Document;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Card;
import fairpull.ui.form.Prose;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Says on every page that the plan is sealed, and takes an amendment with its reason. While the plan is open it takes no room. */
final class AmendmentBar extends Card {
    private final Document document;
    private final Consumer<String> writing;
    private final Prose words = Prose.body("");
    private final JPanel reason = new JPanel(new MigLayout("insets 0, gap 8 4, fillx, wrap 4, hidemode 3",
            "[pref!][grow, fill][pref!][pref!]"));
    private final JLabel label = new JLabel(Words.of("amend.because"));
    private final JTextField because = new JTextField();
    private final Prose complaint = new Prose("", Role.B, Look.Type.SMALL);
    private final JButton begin;
    private final JButton write;
    private final JButton drop;

    /** A bar of a document; {@code writing} gets the reason of an amendment. */
    AmendmentBar(Document document, Consumer<String> writing) {
        super("", new MigLayout("insets 8 14 8 8, gap 8 6, fillx, wrap 1, hidemode 3", "[grow, fill]"));
        this.document = document;
        this.writing = writing;
        setName("amend");
        words.setName("amend.words");
        begin = Buttons.of("amend.begin", document::beginAmendment);
        write = Buttons.primary("amend.write", this::write);
        drop = Buttons.of("amend.drop", document::dropAmendment);
        because.setName("amend.because");
        because.setToolTipText(Words.tip(Words.of("amend.because.tip")));
        because.getAccessibleContext().setAccessibleName(Words.of("amend.because"));
        because.addActionListener(event -> write());
        label.setLabelFor(because);
        JPanel state = new JPanel(new MigLayout("insets 0, gap 8 4, fillx, hidemode 3", "[grow, fill][pref!]"));
        state.setOpaque(false);
        state.add(words, "growx, wmin 0, aligny center");
        state.add(begin);
        add(state, "growx");
        reason.setOpaque(false);
        reason.add(label);
        reason.add(because, "growx, wmin 80");
        reason.add(write);
        reason.add(drop);
        complaint.setName("amend.complaint");
        complaint.setVisible(false);
        reason.add(complaint, "skip 1, spanx, growx, wmin 0");
        add(reason, "growx");
        document.listen(this::refresh);
        refresh();
    }

    /** Asks for the reason of the amendment that is being made. */
    void askReason() {
        complaint.setText(Words.of("amend.missing"));
        complaint.setVisible(true);
        because.requestFocusInWindow();
    }

    private void write() {
        if (because.getText().isBlank()) {
            askReason();
            return;
        }
        complaint.setVisible(false);
        writing.accept(because.getText().strip());
    }

    private void refresh() {
        boolean amending = document.isAmending();
        setVisible(document.isSealed());
        words.setText(Words.of(amending ? "amend.amending" : "amend.sealed", document.sealCode().orElse("")));
        begin.setVisible(!amending);
        reason.setVisible(amending);
        write.setEnabled(document.isChanged());
        if (!amending) {
            because.setText("");
            complaint.setVisible(false);
        }
        revalidate();
    }
}

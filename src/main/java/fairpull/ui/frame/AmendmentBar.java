package fairpull.ui.frame;

import com.formdev.flatlaf.FlatClientProperties;
import fairpull.app.document.Document;
import fairpull.report.chart.Role;
import fairpull.ui.form.Buttons;
import fairpull.ui.form.Line;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Takes an amendment with its reason, in the line that says that the plan is sealed. While it is open this takes no room. */
final class AmendmentBar extends JPanel {
    private final Document document;
    private final Consumer<String> writing;
    private final JLabel label = new JLabel(Words.of("amend.because"));
    private final JTextField because = new JTextField();
    private final Line complaint = new Line(Words.of("amend.missing"), Role.B, Look.Type.SMALL);
    private final JButton begin;
    private final JButton write;
    private final JButton drop;

    /** A bar of a document; {@code writing} gets the reason of an amendment. */
    AmendmentBar(Document document, Consumer<String> writing) {
        super(new MigLayout("insets 0, gap 8 2, fillx, hidemode 3", "[pref!][grow, fill][pref!][pref!]"));
        this.document = document;
        this.writing = writing;
        setName("amend");
        setOpaque(false);
        begin = Buttons.of("amend.begin", document::beginAmendment);
        write = Buttons.primary("amend.write", this::write);
        drop = Buttons.of("amend.drop", document::dropAmendment);
        because.setName("amend.because");
        because.setColumns(16);
        because.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, Words.of("amend.amending"));
        because.setToolTipText(Words.tip(Words.of("amend.because.tip")));
        because.getAccessibleContext().setAccessibleName(Words.of("amend.because"));
        because.addActionListener(event -> write());
        label.setLabelFor(because);
        complaint.setName("amend.complaint");
        complaint.setVisible(false);
        add(begin);
        add(label);
        add(because, "growx, wmin 80");
        add(write);
        add(drop, "wrap");
        add(complaint, "skip 1, spanx, wmin 0");
        document.listen(this::refresh);
        refresh();
    }

    /** Asks for the reason of the amendment that is being made. */
    void askReason() {
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
        begin.setVisible(!amending);
        for (var part : new JComponent[] {label, because, write, drop}) {
            part.setVisible(amending);
        }
        write.setEnabled(document.isChanged());
        if (!amending) {
            because.setText("");
            complaint.setVisible(false);
        }
        revalidate();
    }
}

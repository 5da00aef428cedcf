package fairpull.ui.frame;

import static fairpull.ui.frame.Seat.done;
import static fairpull.ui.frame.Seat.got;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Unsaved;
import fairpull.ui.OffScreen;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;

/** Someone who sits before the window of an audit, without a display. */
final class AuditSeat {
    final Seat seat;
    final OpenAudit audit;

    /** Before a process that was asked for a publication. */
    AuditSeat(Path home, AuditDocument document) {
        seat = new Seat(home);
        done(() -> seat.windows.beginAudit(document, Unsaved.none()));
        audit = got(seat.windows::audits).get(0);
        done(this::layOut);
    }

    /** Before the first audit of a process that has begun already. */
    AuditSeat(Seat seat) {
        this(seat, got(seat.windows::audits).get(0));
        done(this::layOut);
    }

    private AuditSeat(Seat seat, OpenAudit audit) {
        this.seat = seat;
        this.audit = audit;
    }

    /** {@return the same one before the window that came last} */
    AuditSeat last() {
        List<OpenAudit> audits = got(seat.windows::audits);
        return new AuditSeat(seat, audits.get(audits.size() - 1));
    }

    private void layOut() {
        OffScreen.laidOut(audit.pane(), 1280, 800);
    }

    NoFrame frame() {
        return (NoFrame) audit.shell();
    }

    private Stream<Component> all() {
        return Seat.within((Container) audit.pane());
    }

    <C extends Component> C find(String name, Class<C> type) {
        return all().filter(component -> name.equals(component.getName()) && type.isInstance(component)).map(type::cast).findFirst()
                .orElseThrow(() -> new AssertionError("there is no " + name));
    }

    void go(String page) {
        done(() -> find(page, AbstractButton.class).doClick(0));
        done(this::layOut);
    }

    /** Types and ends with Enter. */
    void type(String name, String text) {
        done(() -> {
            JTextField field = find(name, JTextField.class);
            field.setText(text);
            field.postActionEvent();
        });
    }

    /** {@return what stands in a field} */
    String text(String name) {
        return got(() -> find(name, JTextField.class).getText());
    }

    /** Chooses by place; the first one is “not disclosed” where that can be chosen. */
    void choose(String name, int place) {
        done(() -> find(name, JComboBox.class).setSelectedIndex(place));
    }

    void press(String name) {
        done(() -> {
            AbstractButton button = find(name, AbstractButton.class);
            if (!button.isEnabled()) {
                throw new AssertionError("cannot be pressed now: " + name);
            }
            button.doClick(0);
        });
        done(this::layOut);
    }

    /** {@return what is said beneath a field; empty where nothing is wrong} */
    String complaint(String name) {
        JLabel label = find(name + ".complaint", JLabel.class);
        return got(() -> label.isVisible() ? label.getText() : "");
    }

    /** {@return the grades in the side panel} */
    List<String> grades() {
        return got(() -> all().filter(component -> "audit.grade".equals(component.getName())).map(JTextArea.class::cast)
                .map(JTextArea::getText).toList());
    }

    /** {@return all text of the page in view and the panel} */
    String read() {
        return got(() -> String.join("\n", all().filter(JTextArea.class::isInstance).map(JTextArea.class::cast)
                .map(JTextArea::getText).toList()));
    }

    /** {@return what the banner says; empty while it is silent} */
    String said() {
        return got(() -> find("banner", Banner.class).isVisible() ? find("banner.words", JTextArea.class).getText() : "");
    }
}

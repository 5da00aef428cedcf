package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.usecase.KeepTest;
import fairpull.app.usecase.StartingPlan;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.form.ChartView;
import fairpull.ui.page.Page;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever cannot see the window or cannot use a mouse finds every control, by name and by key. */
class AccessibleTest {
    /** Menus of the bar, which needs a display to be made; the window tests look at the bar itself. */
    private static final List<String> MENUS = List.of("menu.test", "menu.edit", "menu.view", "menu.help");

    @TempDir
    private Path home;

    private List<Hand> hands() throws IOException {
        return List.of(Hand.on(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), home),
                Hand.on(KeepTest.open(Path.of("plans/electric-pump")), home));
    }

    /** What is in view with a page: everything outside the stage, and the page. */
    private static List<Component> inView(Hand hand, Page page) {
        List<Page> others = hand.pane().pages().stream().filter(other -> other != page).toList();
        List<Component> hidden = others.stream().flatMap(other -> Hand.within(other.view())).toList();
        return Hand.within(hand.pane()).filter(component -> !hidden.contains(component)).toList();
    }

    private static boolean isControl(Component component) {
        // scroll bars and the arrow of a box belong to the control that they are part of
        boolean part = component.getName() == null && component.getParent() instanceof JComponent parent
                && (parent instanceof JComboBox || parent instanceof javax.swing.JScrollBar);
        return !part && (component instanceof JTextComponent text && text.isEditable() || component instanceof AbstractButton
                || component instanceof JComboBox || component instanceof JProgressBar || component instanceof ChartView
                || component instanceof DayStripView);
    }

    @Test
    void everyControlHasANameAndIsExplained() throws IOException {
        for (Hand hand : hands()) {
            for (Page page : hand.pane().pages().stream().filter(one -> one.notYet(hand.document()).isEmpty()).toList()) {
                hand.go(page.key());
                List<Component> labelled = inView(hand, page).stream().filter(JLabel.class::isInstance)
                        .map(label -> ((JLabel) label).getLabelFor()).toList();
                List<Component> controls = inView(hand, page).stream().filter(AccessibleTest::isControl).toList();
                assertThat(controls).as(page.key()).hasSizeGreaterThan(6);
                for (Component control : controls) {
                    AccessibleContext context = control.getAccessibleContext();
                    assertThat(context.getAccessibleName()).as("%s: name of %s %s", page.key(), control.getClass().getSimpleName(),
                            control.getName()).isNotBlank();
                    boolean says = control instanceof AbstractButton button && !button.getText().isBlank();
                    assertThat(says || labelled.contains(control) || ((JComponent) control).getToolTipText() != null
                            || control instanceof ChartView || control instanceof JProgressBar).as("%s: what explains %s", page.key(), control.getName()).isTrue();
                }
            }
        }
    }

    @Test
    void theTipOfAFieldIsReadOutAgainOnceItsErrorIsMended() throws IOException {
        Hand hand = hands().get(0);
        AccessibleContext field = hand.find("question.worthwhile", JComponent.class).getAccessibleContext();
        String tip = field.getAccessibleDescription();
        assertThat(tip).isNotBlank();
        hand.type("question.worthwhile", "three");
        assertThat(field.getAccessibleDescription()).isNotBlank().isNotEqualTo(tip);
        hand.type("question.worthwhile", "3 hp");
        assertThat(field.getAccessibleDescription()).isEqualTo(tip);
    }

    @Test
    void noTwoMnemonicsInViewAreTheSameAndNoneIsAMenu() throws IOException {
        for (Hand hand : hands()) {
            for (Page page : hand.pane().pages().stream().filter(one -> one.notYet(hand.document()).isEmpty()).toList()) {
                hand.go(page.key());
                Map<Integer, List<String>> keys = new TreeMap<>();
                MENUS.stream().filter(menu -> Words.find(menu).isPresent()).forEach(
                        menu -> keys.computeIfAbsent((int) Words.mnemonic(menu), none -> new ArrayList<>()).add(menu));
                for (Component component : inView(hand, page)) {
                    int key = component instanceof JLabel label ? label.getDisplayedMnemonic()
                            : component instanceof AbstractButton button ? button.getMnemonic() : 0;
                    if (key != 0) {
                        String name = component instanceof JLabel label ? label.getText() : component.getName();
                        keys.computeIfAbsent(key, none -> new ArrayList<>()).add(name);
                    }
                }
                assertThat(keys.values()).as(page.key()).allSatisfy(named -> assertThat(named).hasSize(1));
            }
        }
    }
}

package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.unit.UnitSystem;
import fairpull.ui.form.ChartView;
import fairpull.ui.frame.AuditPane;
import fairpull.ui.page.Leaf;
import fairpull.ui.page.Page;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.strip.DayStripView;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
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
    private static final List<String> AUDIT_MENUS = List.of("menu.audits", "menu.edit", "menu.view", "menu.help");

    @TempDir
    private Path home;

    private List<Hand> hands() throws IOException {
        return List.of(Hand.on(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), home),
                Hand.on(KeepTest.open(Path.of("plans/electric-pump")), home));
    }

    /** What is in view at a time. */
    private record Seen(String page, List<Component> components) {
        /** Everything outside the stage, and the page. */
        static Seen of(Component pane, Leaf page, List<? extends Leaf> pages) {
            Set<Component> hidden = pages.stream().filter(other -> other != page).flatMap(other -> Hand.within(other.view()))
                    .collect(Collectors.toSet());
            return new Seen(page.key(), Hand.within(pane).filter(component -> !hidden.contains(component)).toList());
        }
    }

    /** Has every page of the window of a test and of that of an audit looked at. */
    private void everywhere(Consumer<Seen> look) throws IOException {
        for (Hand hand : hands()) {
            for (Page page : hand.pane().pages().stream().filter(one -> one.notYet(hand.document()).isEmpty()).toList()) {
                hand.go(page.key());
                look.accept(Seen.of(hand.pane(), page, hand.pane().pages()));
            }
        }
        for (AuditDocument audit : List.of(AuditDocument.blank(), KeepAudit.example("silent"))) {
            AuditPane[] pane = new AuditPane[1];
            Waiting.onWindowThread(() -> pane[0] = AuditGallery.pane(audit, Settings.in(home)));
            for (AuditPage page : pane[0].pages().stream().filter(one -> one.notYet().isEmpty()).toList()) {
                Waiting.onWindowThread(() -> {
                    pane[0].go(page);
                    OffScreen.laidOut(pane[0], 1280, 800);
                });
                Waiting.forQuiet();
                Seen all = Seen.of(pane[0], page, pane[0].pages());
                // beside a wide page the panel is gone
                look.accept(new Seen(all.page(), all.components().stream().filter(AccessibleTest::isShown).toList()));
            }
        }
    }

    private static boolean isShown(Component component) {
        return component == null || component.isVisible() && isShown(component.getParent());
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
        everywhere(seen -> {
            List<Component> labelled = seen.components().stream().filter(JLabel.class::isInstance)
                    .map(label -> ((JLabel) label).getLabelFor()).toList();
            List<Component> controls = seen.components().stream().filter(AccessibleTest::isControl).toList();
            assertThat(controls).as(seen.page()).hasSizeGreaterThan(5);
            for (Component control : controls) {
                AccessibleContext context = control.getAccessibleContext();
                assertThat(context.getAccessibleName()).as("%s: name of %s %s", seen.page(), control.getClass().getSimpleName(),
                        control.getName()).isNotBlank();
                boolean says = control instanceof AbstractButton button && !button.getText().isBlank();
                assertThat(says || labelled.contains(control) || ((JComponent) control).getToolTipText() != null
                        || control instanceof ChartView || control instanceof JProgressBar)
                        .as("%s: what explains %s", seen.page(), control.getName()).isTrue();
            }
        });
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
        everywhere(seen -> {
            boolean audit = seen.components().stream().anyMatch(component -> "page.published".equals(component.getName()));
            Map<Integer, List<String>> keys = new TreeMap<>();
            (audit ? AUDIT_MENUS : MENUS).forEach(
                    menu -> keys.computeIfAbsent((int) Words.mnemonic(menu), none -> new ArrayList<>()).add(menu));
            for (Component component : seen.components()) {
                int key = component instanceof JLabel label ? label.getDisplayedMnemonic()
                        : component instanceof AbstractButton button ? button.getMnemonic() : 0;
                if (key != 0) {
                    String name = component instanceof JLabel label ? label.getText() : component.getName();
                    keys.computeIfAbsent(key, none -> new ArrayList<>()).add(name);
                }
            }
            assertThat(keys.values()).as(seen.page()).allSatisfy(named -> assertThat(named).hasSize(1));
        });
    }
}

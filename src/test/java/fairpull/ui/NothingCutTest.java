package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.KeepAudit;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.ui.frame.AuditPane;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.page.Page;
import fairpull.ui.page.audit.AuditPage;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On no page does a field or a button reach beyond its place, in narrow windows and large type neither. */
class NothingCutTest {
    /** FlatLaf's borders may be drawn a pixel outside. */
    private static final int BORDER = 2;

    @TempDir
    private Path home;

    @AfterEach
    void usualType() throws Exception {
        SwingUtilities.invokeAndWait(() -> Look.install(Mode.LIGHT, 1));
    }

    @ParameterizedTest
    @CsvSource({"1, 1280", "1, 1024", "1.5, 1280", "1.25, 1024"})
    void nothingReachesBeyondItsPlace(double type, int width) throws Exception {
        List<String> cut = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            Look.install(Mode.LIGHT, type);
            Document document = Document.unsaved(ExamplePlan.plan());
            TestPane pane = OffScreen.laidOut(new TestPane(document, Settings.in(home), Pages::of), width, 768);
            for (Page page : pane.pages()) {
                if (page.notYet(document).isEmpty()) {
                    pane.go(page);
                    OffScreen.laidOut(pane, width, 768);
                    collect(page.key(), pane, cut);
                }
            }
        });
        for (AuditDocument audit : List.of(AuditDocument.blank(), KeepAudit.example("sound"))) {
            AuditPane[] pane = new AuditPane[1];
            SwingUtilities.invokeAndWait(() -> pane[0] = OffScreen.laidOut(AuditGallery.pane(audit, Settings.in(home)), width, 768));
            for (AuditPage page : pane[0].pages().stream().filter(one -> one.notYet().isEmpty()).toList()) {
                SwingUtilities.invokeAndWait(() -> pane[0].go(page));
                Waiting.forQuiet();
                SwingUtilities.invokeAndWait(() -> collect(page.key(), OffScreen.laidOut(pane[0], width, 768), cut));
            }
        }
        assertThat(cut).isEmpty();
    }

    private static void collect(String page, Component component, List<String> cut) {
        if (!component.isVisible()) {
            return;
        }
        Container around = component.getParent();
        int right = component.getX() + component.getWidth();
        boolean reachesOut = around != null && !(around instanceof JViewport) && component.getWidth() > 0 && right > around.getWidth() + BORDER;
        boolean isShort = component instanceof AbstractButton && component.getWidth() + BORDER < component.getPreferredSize().width;
        if (reachesOut || isShort) {
            cut.add(page + ": " + component.getName() + " " + component.getBounds());
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(page, child, cut);
            }
        }
    }
}

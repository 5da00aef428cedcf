package fairpull.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.QuestionEdits;
import fairpull.app.document.Settings;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.domain.plan.Plan;
import fairpull.engine.planning.PlanReview;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MannersTest {
    @TempDir
    private Path folder;
    private Settings settings;
    private Document document;
    private TestPane pane;

    @BeforeEach
    void open() {
        settings = Settings.in(folder);
        document = Document.unsaved(ExamplePlan.plan());
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            pane = new TestPane(document, settings, Pages::of);
            OffScreen.laidOut(pane, 1280, 800);
        });
        Waiting.forQuiet();
    }

    private static Component find(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return child;
            }
            Component deeper = child instanceof Container container ? find(container, name) : null;
            if (deeper != null) {
                return deeper;
            }
        }
        return null;
    }

    private void click(String name) {
        Waiting.onWindowThread(() -> ((AbstractButton) find(pane, name)).doClick());
    }

    @Test
    void theExampleIsWhollySaidAndHasNoCautionOfItsOwn() {
        Plan plan = ExamplePlan.plan();
        assertThat(plan.remark()).contains("invented");
        assertThat(PlanReview.review(plan)).noneMatch(notice -> notice.code().severity().name().equals("ALARM"));
        assertThat(document.isUntouched()).isTrue();
    }

    @Test
    void theTourEndsAfterThreeStepsAndIsNotOfferedAgain() {
        Waiting.onWindowThread(pane::offerTour);
        Component tour = find(pane, "tour");
        assertThat(tour.isVisible()).isTrue();
        for (int step = 0; step < 3; step++) {
            click("tour.next");
        }
        assertThat(tour.isVisible()).isFalse();
        Waiting.onWindowThread(pane::offerTour);
        assertThat(tour.isVisible()).isFalse();
    }

    @Test
    void aDroppedFolderIsOpenedAndAFileIsForThePage() throws Exception {
        Path test = Files.createDirectories(folder.resolve("test"));
        List<Path> opened = new ArrayList<>();
        Waiting.onWindowThread(() -> {
            pane.take(test, opened::add);
            pane.take(test.resolve("plan.json"), opened::add);
            pane.take(folder.resolve("log.csv"), opened::add);
        });
        assertThat(opened).containsExactly(test, test.toAbsolutePath());
        assertThat(((JLabel) find(pane, "message")).getText()).contains("Limits");
        Waiting.onWindowThread(() -> {
            pane.go(pane.pages().get(3));
            pane.take(Path.of("demo-data/cool-down/intake-air.csv"), opened::add);
        });
        Waiting.forQuiet();
        assertThat(((JTextArea) find(pane, "heat.heading")).getText()).isNotBlank().doesNotContain("Nothing is known");
    }

    @Test
    void thePagesHaveKeys() {
        Object key = pane.getInputMap(TestPane.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke("ctrl 3"));
        assertThat(key).isEqualTo("page.sequence");
        Waiting.onWindowThread(() -> pane.getActionMap().get(key).actionPerformed(new ActionEvent(pane, 0, "")));
        assertThat(((AbstractButton) find(pane, "page.sequence")).isSelected()).isTrue();
    }

    @Test
    void anAmendmentIsNotWrittenWithoutAReason() {
        List<String> reasons = new ArrayList<>();
        Waiting.onWindowThread(() -> {
            pane.onAmend(reasons::add);
            document.savedTo(folder, document.plan());
            document.sealedAs("0000-0000-00");
        });
        assertThat(find(pane, "amend").isVisible()).isTrue();
        click("amend.begin");
        Waiting.onWindowThread(() -> document.edit(QuestionEdits.title("another title")));
        click("amend.write");
        assertThat(reasons).isEmpty();
        assertThat(find(pane, "amend.complaint").isVisible()).isTrue();
        Waiting.onWindowThread(() -> ((JTextField) find(pane, "amend.because")).setText("a typing mistake"));
        click("amend.write");
        assertThat(reasons).containsExactly("a typing mistake");
    }

    @Test
    void helpHasEveryWord() {
        Waiting.onWindowThread(() -> assertThat(OffScreen.laidOut(new HelpView(), 720, 720).getComponentCount()).isPositive());
    }
}

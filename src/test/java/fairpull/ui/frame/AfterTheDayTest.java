package fairpull.ui.frame;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.unit.UnitSystem;
import fairpull.io.folder.TestFolder;
import fairpull.report.chart.Shape;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.form.ChartView;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window shows once the pulls of a sealed plan are in, and what it shows while a plan still lacks its facts. */
class AfterTheDayTest {
    private static final Path DEMO = Path.of("plans/panel-filter");

    @TempDir
    Path folder;

    private TestPane pane;

    @AfterEach
    void usualType() {
        Waiting.onWindowThread(() -> Look.install(Mode.LIGHT, 1));
    }

    private void show(Document document, double scale) {
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, scale);
            pane = OffScreen.laidOut(new TestPane(document, Settings.in(folder), Pages::of), 1280, 800);
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> OffScreen.laidOut(pane, 1280, 800));
    }

    private static Document judged() throws IOException {
        return Document.of(DEMO, TestFolder.open(DEMO).read().plan(), Optional.of("0000-0000-00"));
    }

    private static Stream<Component> all(Component component) {
        Stream<Component> inside = component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(AfterTheDayTest::all) : Stream.empty();
        return Stream.concat(Stream.of(component), inside);
    }

    private Component find(String name) {
        return all(pane).filter(one -> name.equals(one.getName())).findFirst().orElseThrow(() -> new AssertionError("no " + name));
    }

    private List<String> stripWords() {
        return pane.strip().drawing().shapes().stream().filter(Shape.Words.class::isInstance).map(Shape.Words.class::cast)
                .map(Shape.Words::text).toList();
    }

    @Test
    void theStripCarriesTheMeasuredValuesAndThePanelSaysWhatWasFound() throws IOException {
        show(judged(), 1);

        // means of the counted pulls in plans/panel-filter, as `fairpull judge` prints them
        assertThat(stripWords()).contains("A1", "81.7", "83.5", "83.2").contains("mean power 2500-6000 rpm, kW");
        assertThat(find("outlook").isVisible()).isFalse();
        assertThat(all(find("found")).filter(JTextComponent.class::isInstance).map(text -> ((JTextComponent) text).getText()))
                .contains("Undecided").anyMatch(text -> text.contains("interval"));
        Waiting.onWindowThread(() -> ((AbstractButton) find("found.finding")).doClick());
        assertThat(((AbstractButton) find("page.finding")).isSelected()).isTrue();
    }

    @Test
    void anAmendmentBringsThePlanBack() throws IOException {
        Document document = judged();
        show(document, 1);
        Waiting.onWindowThread(document::beginAmendment);

        assertThat(find("outlook").isVisible()).isTrue();
        assertThat(find("found").isVisible()).isFalse();
        assertThat(stripWords()).doesNotContain("81.7");
        Waiting.onWindowThread(document::dropAmendment);
        assertThat(stripWords()).contains("81.7");
    }

    @Test
    void aPlanWithoutItsFactsLeadsToThePagesWhereTheyAreSaid() {
        show(Document.unsaved(StartingPlan.in(UnitSystem.METRIC)), 1);
        Waiting.onWindowThread(() -> pane.go(pane.pages().get(2)));
        Waiting.forQuiet();

        assertThat(find("days.chart").isVisible()).isFalse();
        assertThat(find("days.chart.missing").isVisible()).isTrue();
        Waiting.onWindowThread(() -> ((AbstractButton) find("missing.rig")).doClick());
        assertThat(((AbstractButton) find("page.rig")).isSelected()).isTrue();
    }

    @Test
    void theStripGrowsWithTheTypeAndIsStillClickedWhereItIsDrawn() throws IOException {
        show(judged(), 1);
        var usual = pane.strip().boundsOf("A1").orElseThrow();
        int height = pane.strip().getHeight();
        show(judged(), 1.5);

        assertThat(pane.strip().getHeight()).isEqualTo((int) Math.round(1.5 * height));
        assertThat(pane.strip().boundsOf("A1").orElseThrow().height()).isEqualTo(1.5 * usual.height());
        assertThat(pane.strip().boundsOf("A2").orElseThrow().right()).isLessThan(pane.strip().getWidth());
        ChartView chart = new ChartView("days.chart", 300, (width, high) -> Optional.empty());
        assertThat(chart.getPreferredSize().height).isEqualTo(450);
    }
}

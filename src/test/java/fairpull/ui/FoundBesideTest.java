package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Document;
import fairpull.app.document.Settings;
import fairpull.app.usecase.keeping.KeepTest;
import fairpull.report.chart.Chart;
import fairpull.report.chart.Drawing;
import fairpull.ui.form.ScaledChart;
import fairpull.ui.frame.Pages;
import fairpull.ui.frame.TestPane;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verdict and the change over engine speed are seen at once where the window is wide enough for both. */
class FoundBesideTest {
    @TempDir
    private Path home;
    private TestPane pane;

    private void show(int width) throws IOException {
        Document document = KeepTest.open(Path.of("plans/electric-pump"));
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            pane = OffScreen.laidOut(new TestPane(document, Settings.in(home), Pages::of), width, 800);
            pane.pages().stream().filter(page -> page.key().equals("page.finding")).forEach(pane::go);
        });
        Waiting.until(() -> Hand.within(pane).anyMatch(part -> "finding.verdict".equals(part.getName())));
        Waiting.onWindowThread(() -> OffScreen.laidOut(pane, width, 800));
    }

    private Rectangle place(String name) {
        Component card = Hand.within(pane).filter(part -> name.equals(part.getName())).findFirst().orElseThrow();
        return SwingUtilities.convertRectangle(card.getParent(), card.getBounds(), pane);
    }

    @Test
    void besideEachOtherInAWideWindow() throws IOException {
        show(1280);

        Rectangle verdict = place("finding.verdict");
        Rectangle change = place("finding.change");
        assertThat(change.x).isGreaterThan(verdict.x + verdict.width);
        assertThat(change.y).isEqualTo(verdict.y);
        assertThat(Math.abs(change.width - verdict.width)).isLessThanOrEqualTo(1);
        assertThat(place("finding.standing").y).isGreaterThan(verdict.y + verdict.height);
        assertThat(place("finding.claims").x).isEqualTo(change.x);
        assertThat(place("report").y).isGreaterThan(change.y + change.height);
    }

    @Test
    void belowEachOtherWhereTheChartsWouldGrowTooNarrow() throws IOException {
        show(1000);

        Rectangle verdict = place("finding.verdict");
        Rectangle change = place("finding.change");
        assertThat(change.x).isEqualTo(verdict.x);
        assertThat(change.y).isGreaterThan(verdict.y + verdict.height);
    }

    @Test
    void aChartHasItsTypeInFullSizeDownToItsNarrowestWidth() {
        Chart chart = width -> new Drawing(width, 100, "any", "any", List.of());
        ScaledChart shown = new ScaledChart(chart);

        shown.setSize(600, 50);
        assertThat(shown.getPreferredSize()).isEqualTo(new Dimension(600, 100));
        shown.setSize(2000, 50);
        assertThat(shown.getPreferredSize()).isEqualTo(new Dimension((int) Drawing.WIDTH, 100));
        shown.setSize((int) Chart.NARROWEST / 2, 50);
        assertThat(shown.getPreferredSize()).isEqualTo(new Dimension((int) Chart.NARROWEST / 2, 50));
    }
}

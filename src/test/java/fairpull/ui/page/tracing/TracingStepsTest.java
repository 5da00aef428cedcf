package fairpull.ui.page.tracing;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.document.Settings;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.PixelPoint;
import fairpull.engine.tracing.DrawnChart;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a picture to both curves without a click that is not on the picture: each step takes the next tool in hand by itself. */
class TracingStepsTest {
    @TempDir
    private Path folder;
    private final DrawnChart chart = TracedExample.chart();
    private TracingPane pane;
    private int clicks;

    @BeforeEach
    void open() throws IOException {
        Path file = Files.write(folder.resolve("chart.png"), chart.png());
        Waiting.onWindowThread(() -> {
            Look.install(Mode.LIGHT, 1);
            pane = new TracingPane(Settings.in(folder.resolve("home")), () -> { });
            OffScreen.laidOut(pane, 1280, 760);
            pane.open(file);
        });
        Waiting.forQuiet();
    }

    private void click(PixelPoint place) {
        clicks++;
        Waiting.onWindowThread(() -> pane.bench().click(place));
        Waiting.forQuiet();
    }

    private static Stream<Component> parts(Component component) {
        return Stream.concat(Stream.of(component), component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(TracingStepsTest::parts) : Stream.empty());
    }

    private <C extends Component> C find(String name, Class<C> type) {
        return parts(pane).filter(part -> name.equals(part.getName())).map(type::cast).findFirst().orElseThrow();
    }

    private void mark(Tool tool, PixelPoint place, String value) {
        assertThat(pane.bench().tool()).isEqualTo(tool);
        click(place);
        Waiting.onWindowThread(() -> {
            JTextField field = find(tool.key() + ".value", JTextField.class);
            field.setText(value);
            field.postActionEvent();
        });
    }

    private void marks() {
        mark(Tool.X_FIRST, new PixelPoint(chart.xPx(2000), chart.yPx(0)), "2000 rpm");
        mark(Tool.X_SECOND, new PixelPoint(chart.xPx(6000), chart.yPx(0)), "6000");
        mark(Tool.Y_FIRST, new PixelPoint(chart.xPx(1000), chart.yPx(0)), "0 kW");
        mark(Tool.Y_SECOND, new PixelPoint(chart.xPx(1000), chart.yPx(200)), "200");
    }

    @Test
    void fourMarksAndAClickOnEachLineAreAllTheClicksThereAre() {
        marks();
        assertThat(pane.bench().tool()).as("after the last mark").isEqualTo(Tool.FOLLOW_A);
        click(chart.on(DrawnChart::power, 5600));
        assertThat(pane.bench().tool()).as("after curve A").isEqualTo(Tool.FOLLOW_B);
        click(chart.on(TracedExample::changed, 5600));
        assertThat(clicks).isEqualTo(6);
        assertThat(pane.bench().isComplete()).isTrue();
        assertThat(find("tracing.task", JTextArea.class).getText()).contains("Both curves are traced");
        for (Part part : Part.values()) {
            assertThat(pane.document().tracing().orElseThrow().line(part).points()).hasSizeGreaterThan(100);
        }
    }

    @Test
    void aMarkThatIsSetAgainLeadsBackToWhatIsLacking() {
        marks();
        click(chart.on(DrawnChart::power, 5600));
        Waiting.onWindowThread(() -> pane.bench().take(Tool.X_SECOND));
        click(new PixelPoint(chart.xPx(5000), chart.yPx(0)));
        assertThat(pane.bench().tool()).isEqualTo(Tool.FOLLOW_B);
    }

    /** Of the pixels along the line, hardly any is hidden; before, every one was. */
    @Test
    void theLineThatWasTracedIsStillSeen() {
        marks();
        click(chart.on(DrawnChart::power, 5600));
        Waiting.onWindowThread(() -> pane.bench().turnTo(Part.A));
        int[] shown = new int[2];
        Waiting.onWindowThread(() -> {
            PictureView view = pane.view();
            BufferedImage picture = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
            view.paint(picture.getGraphics());
            for (double rpm = 2500; rpm < 6000; rpm += 25) {
                PixelPoint place = chart.on(DrawnChart::power, rpm);
                int rgb = picture.getRGB((int) Math.round(view.x(place)), (int) Math.round(view.y(place)));
                boolean isLine = (rgb >> 16 & 255) > 120 && (rgb >> 8 & 255) < 140;
                shown[isLine ? 1 : 0]++;
            }
        });
        assertThat(shown[1]).as("hidden %d", shown[0]).isGreaterThan(6 * shown[0]);
    }

    @Test
    void nearThePointerEveryPointCanBeSeen() {
        marks();
        click(chart.on(DrawnChart::power, 5600));
        int[] changed = new int[1];
        Waiting.onWindowThread(() -> {
            PictureView view = pane.view();
            BufferedImage away = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
            BufferedImage near = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_INT_RGB);
            view.paint(away.getGraphics());
            PixelPoint place = chart.on(DrawnChart::power, 4000);
            view.pointer(Optional.of(new Point((int) view.x(place), (int) view.y(place))));
            view.paint(near.getGraphics());
            for (int x = 0; x < near.getWidth(); x++) {
                for (int y = 0; y < near.getHeight(); y++) {
                    changed[0] += near.getRGB(x, y) == away.getRGB(x, y) ? 0 : 1;
                }
            }
        });
        assertThat(changed[0]).isBetween(50, 6000);
    }
}

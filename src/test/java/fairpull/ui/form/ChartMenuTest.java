package fairpull.ui.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.KeepFile;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.domain.day.DayClock;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.Palette;
import fairpull.report.chart.PlanStrip;
import fairpull.report.chart.Role;
import fairpull.ui.Waiting;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

class ChartMenuTest {
    private static final Drawing DAY = PlanStrip.draw(DayClock.of(ExamplePlan.plan().sequence()), Optional.empty(), Optional.empty(), 900)
            .drawing();

    @TempDir
    private Path folder;

    @BeforeAll
    static void dress() {
        Look.install(Mode.LIGHT, 1);
    }

    /** A program that draws pictures knows neither our style sheet nor custom properties. */
    @Test
    void anSvgFileStandsOnItsOwn() throws Exception {
        byte[] svg = ChartMenu.svg(DAY);
        Element root = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg))
                .getDocumentElement();
        assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(root.getAttribute("width")).isEqualTo("900");
        assertThat(new String(svg, StandardCharsets.UTF_8)).doesNotContain("var(").contains(Palette.LIGHT.colour(Role.B));
    }

    @Test
    void aPictureIsTwiceTheSizeAndNotEmpty() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(ChartMenu.png(DAY)));
        assertThat(image.getWidth()).isEqualTo(1800);
        int ground = image.getRGB(0, 0);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        assertThat(Arrays.stream(pixels).filter(pixel -> pixel != ground).count()).isGreaterThan(10_000);
    }

    @Test
    void aFileGetsItsEnding() {
        assertThat(KeepFile.named(folder.resolve("the day v1.2"), ".svg").getFileName()).hasToString("the day v1.2.svg");
        assertThat(KeepFile.named(folder.resolve("DAY.SVG"), ".svg").getFileName()).hasToString("DAY.SVG");
    }

    /** Hears what is said and what is asked. */
    private static final class Heard implements Teller {
        private final List<String> said = new ArrayList<>();
        private Map<String, Runnable> asked = Map.of();

        @Override
        public void say(String words) {
            said.add(words);
        }

        @Override
        public void ask(String question, Map<String, Runnable> answers) {
            said.add(question);
            asked = answers;
        }
    }

    @Test
    void aChartReplacesAnotherFileOnlyWhenThatIsWanted() throws IOException {
        Path file = Files.writeString(folder.resolve("day.png"), "something else");
        Heard heard = new Heard();
        List<Boolean> onWindowThread = new ArrayList<>();
        Waiting.onWindowThread(() -> ChartMenu.save(heard, file, () -> {
            onWindowThread.add(SwingUtilities.isEventDispatchThread());
            return ChartMenu.png(DAY);
        }));
        Waiting.forQuiet();
        assertThat(heard.said).singleElement().asString().contains("there already");
        assertThat(file).hasContent("something else");
        Waiting.onWindowThread(heard.asked.get("file.replace"));
        Waiting.forQuiet();
        assertThat(Files.readAllBytes(file)).isEqualTo(ChartMenu.png(DAY));
        assertThat(heard.said.get(1)).contains("day.png");
        assertThat(onWindowThread).containsExactly(false);
    }

    @Test
    void aChartThatCannotBeWrittenIsSaidInWords() {
        Heard heard = new Heard();
        Waiting.onWindowThread(() -> ChartMenu.save(heard, folder.resolve("nowhere").resolve("day.svg"), () -> ChartMenu.svg(DAY)));
        Waiting.forQuiet();
        assertThat(heard.said).singleElement().asString().contains("is not there").doesNotContain("Exception");
    }
}

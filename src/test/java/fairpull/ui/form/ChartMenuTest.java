package fairpull.ui.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.app.usecase.ExamplePlan;
import fairpull.app.usecase.KeepFile;
import fairpull.domain.day.DayClock;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.Palette;
import fairpull.report.chart.PlanStrip;
import fairpull.report.chart.Role;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Mode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
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
    void aFileGetsItsEnding() throws IOException {
        Path named = KeepFile.bytes(folder.resolve("the day v1.2"), ".svg", ChartMenu.svg(DAY));
        assertThat(named.getFileName()).hasToString("the day v1.2.svg");
        assertThat(Files.readAllBytes(named)).isEqualTo(ChartMenu.svg(DAY));
        assertThat(KeepFile.bytes(folder.resolve("DAY.SVG"), ".svg", new byte[1]).getFileName()).hasToString("DAY.SVG");
    }
}

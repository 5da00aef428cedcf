package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.report.Examples;
import fairpull.report.Findings;
import fairpull.report.write.HtmlReport;
import fairpull.report.write.ReportOptions;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SvgWriterTest {
    @Test
    void everyChartOfEveryReportIsWellFormedAndDescribed() throws Exception {
        int charts = 0;
        for (String name : Examples.all().keySet()) {
            Matcher svg = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL)
                    .matcher(HtmlReport.html(Examples.all().get(name), ReportOptions.full()));
            while (svg.find()) {
                Element root = parsed(svg.group());
                assertThat(root.getAttribute("role")).isEqualTo("img");
                assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isNotBlank();
                assertThat(root.getElementsByTagName("desc").item(0).getTextContent()).isNotBlank();
                charts++;
            }
        }
        assertThat(charts).isGreaterThanOrEqualTo(14);
    }

    @Test
    void textThatIsMarkupOrNoXmlAtAllIsMadeHarmless() throws Exception {
        String text = "<b>\"5\" & '6'</b>\u0000\u000b\ud800 ok";
        Shape words = new Shape.Words(new Point(0, 10), text, Role.INK, Shape.Type.SMALL, Shape.Anchor.START);

        Element root = parsed(SvgWriter.svg(new Drawing(100, 20, text, text, List.of(words)), "x"));

        assertThat(root.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("<b>\"5\" & '6'</b> ok");
    }

    @Test
    void coloursAreOnlyThoseOfRoles() {
        String svg = SvgWriter.svg(IntervalChart.of(Findings.gain(List.of())).orElseThrow().wide(Drawing.WIDTH), "x");

        assertThat(svg).doesNotContain("style=").doesNotContain("#").doesNotContain("rgb").contains("class=\"f-b\"");
    }

    @Test
    void hatchingStaysInsideItsRectangle() {
        Bounds bounds = new Bounds(10, 20, 130, 46);

        List<Shape.Line> lines = HatchLines.of(new Shape.Hatch(bounds, 8, Role.B));

        assertThat(lines).hasSizeGreaterThan(15).allSatisfy(line -> {
            for (Point end : List.of(line.from(), line.to())) {
                assertThat(end.x()).isBetween(bounds.x(), bounds.right());
                assertThat(end.y()).isBetween(bounds.y(), bounds.bottom());
            }
            assertThat(line.to().x() - line.from().x()).isEqualTo(line.from().y() - line.to().y());
        });
    }

    private static Element parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))).getDocumentElement();
    }
}

package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.ChanceAlone;
import fairpull.engine.audit.Audit;
import fairpull.io.json.PublicationJson;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The charts of an audit: what they show, and that no text is cut or runs into another. */
class AuditChartsTest {
    @Test
    void theDifferenceStandsAgainstZeroAndWhatIsClaimed() {
        AuditAnswer answer = answer("200.0 hp", "216.5 hp", "20 hp", "12 hp");
        Drawing chart = PublishedChart.draw(answer, answer.publication().figures().get(0)).orElseThrow();

        assertThat(words(chart)).contains("0", "f, published +16.5\u202fhp", "claimed 20\u202fhp", "claimed 12\u202fhp");
        double zero = upright(chart, Role.INK).get(0);
        List<Double> claimed = upright(chart, Role.GATE);
        assertThat(claimed).hasSize(2);
        assertThat((claimed.get(1) - zero) / (claimed.get(0) - zero)).isCloseTo(20.0 / 12, within(1e-9));
    }

    /** A bar that starts just beside zero: neither a label nor its ground hides where the line of zero runs, nor any other. */
    @ParameterizedTest
    @CsvSource({"200.0 hp, 205.5 hp, 2 hp", "200.0 hp, 204.1 hp, 4 hp", "200.0 hp, 204.4 hp, 4.4 hp", "200.0 hp, 190.0 hp, 1 hp"})
    void noWordsLieOnALine(String before, String after, String claimed) {
        AuditAnswer answer = answer(before, after, claimed);
        Drawing chart = PublishedChart.draw(answer, answer.publication().figures().get(0)).orElseThrow();
        List<Shape.Line> lines = chart.shapes().stream().filter(shape -> shape instanceof Shape.Line).map(shape -> (Shape.Line) shape).toList();

        assertThat(lines).hasSizeGreaterThan(6);
        assertThat(chart.shapes()).filteredOn(shape -> shape instanceof Shape.Words || shape instanceof Shape.Area).isNotEmpty()
                .allSatisfy(shape -> assertThat(lines).noneMatch(line -> bounds(shape).overlaps(around(line))));
    }

    private static Bounds bounds(Shape shape) {
        return shape instanceof Shape.Words words ? words.bounds() : ((Shape.Area) shape).bounds();
    }

    private static Bounds around(Shape.Line line) {
        double x = Math.min(line.from().x(), line.to().x());
        double y = Math.min(line.from().y(), line.to().y());
        double half = line.width() / 2;
        return new Bounds(x - half, y - half, Math.abs(line.from().x() - line.to().x()) + line.width(),
                Math.abs(line.from().y() - line.to().y()) + line.width());
    }

    @Test
    void nothingClaimedNothingDrawn() {
        AuditAnswer answer = answer("200 hp", "216 hp");

        assertThat(PublishedChart.draw(answer, answer.publication().figures().get(0))).isEmpty();
    }

    /** Where the curve passes 5 % the scale ends its dark part. */
    @Test
    void theCurveOfChancePassesFivePercentWhereItTips() {
        AuditAnswer.OfFigure figure = answer("200.0 hp", "204.0 hp", "4 hp").figures().get(0);
        double tipping = figure.chance().tippingPull().orElseThrow();
        List<ChanceAlone.At> below = figure.chance().points().stream().filter(at -> at.pullScatter() < tipping).toList();
        List<ChanceAlone.At> above = figure.chance().points().stream().filter(at -> at.pullScatter() > tipping).toList();

        assertThat(below).isNotEmpty().allMatch(at -> at.chance() < 0.05);
        assertThat(above).isNotEmpty().allMatch(at -> at.chance() > 0.05);
        assertThat(words(ChanceChart.draw(figure).orElseThrow())).anyMatch(text -> text.startsWith("more than 5\u202f% of cases above "))
                .contains("plausible 0.2\u202f% to 1.6\u202f%, ordinary 0.7\u202f%");
    }

    @Test
    void publicationsOfAnySizeAreLegible() {
        Random random = new Random(20261);
        for (int round = 0; round < 250; round++) {
            double level = Math.pow(10, random.nextInt(6) - 1);
            String decimals = "%." + random.nextInt(4) + "f " + (random.nextBoolean() ? "hp" : "lb-ft");
            String before = String.format(Locale.ROOT, decimals, level * (1 + random.nextDouble()));
            String after = String.format(Locale.ROOT, decimals, level * (1 + random.nextDouble() * 2));
            String[] claims = new String[random.nextInt(4)];
            for (int k = 0; k < claims.length; k++) {
                claims[k] = String.format(Locale.ROOT, "%.1f %%", 30 * random.nextDouble() * random.nextDouble());
            }
            if (before.startsWith("0 ") || before.matches("0\\.0* .*")) {
                continue;
            }
            AuditAnswer answer = answer(before, after, claims);
            answer.figures().forEach(figure -> {
                PublishedChart.draw(answer, figure.figure()).ifPresent(LayoutTest::assertLegible);
                ChanceChart.draw(figure).ifPresent(LayoutTest::assertLegible);
            });
        }
    }

    private static List<String> words(Drawing drawing) {
        return drawing.shapes().stream().filter(shape -> shape instanceof Shape.Words).map(shape -> ((Shape.Words) shape).text()).toList();
    }

    private static List<Double> upright(Drawing drawing, Role role) {
        return drawing.shapes().stream().filter(shape -> shape instanceof Shape.Line).map(shape -> (Shape.Line) shape)
                .filter(line -> line.role() == role && line.from().x() == line.to().x()).map(line -> line.from().x()).distinct().toList();
    }

    private static AuditAnswer answer(String before, String after, String... claims) {
        List<String> claimed = List.of(claims).stream()
                .map(gain -> "{\"words\": \"c\", \"figure\": \"f\", \"gain\": \"%s\"}".formatted(gain)).toList();
        return Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "%s", "after": "%s"}],
                 "claims": [%s]}
                """.formatted(before, after, String.join(", ", claimed)), "drawn"), List.of());
    }
}

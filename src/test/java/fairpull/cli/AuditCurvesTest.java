package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.AxisPoint;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.PictureFile;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.unit.Units;
import fairpull.io.json.TraceJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Published curves from tables, traces and typed points, and known scatter, through the verb. */
class AuditCurvesTest {
    private static final Path PUBLISHED = Path.of("demo-data/published");

    @TempDir
    private Path folder;

    @Test
    void theDemoWithCurvesRaisesWhatItSays() {
        JsonNode audited = Run.of("audit", PUBLISHED.resolve("inlet.json"), "--json").json();

        assertThat(states(audited, "raised")).containsExactly("text-against-plot", "gain-at-start-only", "picked-pulls", "picked-speed",
                "barometers", "smoothing", "no-return");
        assertThat(states(audited, "clear")).contains("curves-identity", "curves-meet", "curve-plateau", "curve-stretch-copied");
        assertThat(Run.of("audit", PUBLISHED.resolve("inlet.json")).words()).contains("Text and plot", "printed as 182.6 hp",
                "and the curve of power shows 177.40 hp; reading and rounding allow ±0.29 hp", "at 350 m that alone gives an unchanged car +5.1 %.", "order AB does not return").doesNotContain("NaN");
    }

    @Test
    void aTraceIsReadWithItsErrorsAndTypedPointsWithoutAny() {
        SmallTest.write(folder.resolve("chart.json"), TraceJson.indented(trace()));
        Path file = publication("{\"trace\": \"chart.json\"}", "{\"points\": [\"2000 60.0\", \"4000 120.0\", \"6000 180.0\"]}");

        JsonNode found = check(Run.of("audit", file, "--json").json(), "text-against-plot");
        assertThat(found.get("found")).hasSize(1);
        assertThat(found.get("found").get(0).get("side").asText()).isEqualTo("after");
        assertThat(found.get("found").get(0).get("shown").asDouble()).isEqualTo(120);
    }

    @Test
    void curvesThatCannotBeReadAreRefusedInOneLine() throws IOException {
        String points = "{\"points\": [\"2000 60\", \"6000 180\"]}";
        SmallTest.write(folder.resolve("falling.csv"), "Engine speed (rpm),Power (hp)\n3000,90\n2000,60\n4000,120\n");
        SmallTest.write(folder.resolve("torque.csv"), "Engine speed (rpm),Torque (N·m)\n3000,90\n3500,60\n4000,120\n");
        SmallTest.write(folder.resolve("chart.json"), TraceJson.indented(trace()).replace("\"hp\"", "\"N·m\""));
        assertThat(Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("torque.csv"))).exists();

        Run.of("audit", publication(points, "{\"file\": \"none.csv\"}")).refused(3, "none.csv", "no such file beside the publication");
        Run.of("audit", publication(points, "{\"file\": \"link.csv\"}")).refused(3, "link.csv", "a link is not followed");
        Run.of("audit", publication(points, "{\"file\": \"../x.csv\"}")).refused(3, "line ", "without a folder");
        Run.of("audit", publication(points, "{\"file\": \"falling.csv\"}")).refused(3, "falling.csv, line 3", "rises from row to row");
        Run.of("audit", publication(points, "{\"file\": \"torque.csv\"}")).refused(3, "torque.csv", "power");
        Run.of("audit", publication(points, "{\"trace\": \"chart.json\"}")).refused(3, "chart.json", "its axis is in N·m");
        Run.of("audit", publication(points, "{\"trace\": \"falling.csv\"}")).refused(3, "falling.csv", "not JSON");
    }

    @Test
    void aKnownScatterTakesThePlaceOfTheAssumedRange() throws IOException {
        Path silent = PUBLISHED.resolve("silent.json");
        JsonNode figure = Run.of("audit", silent, "--pull-scatter", "0.2%", "--pull-df", "20", "--refit-scatter", "0.3hp", "--refit-df", "8",
                "--json").json().get("figures").get(0);

        assertThat(figure.get("scatter").get("pullStated").asBoolean()).isTrue();
        assertThat(figure.get("chanceLeast").asDouble()).isEqualTo(figure.get("chanceMost").asDouble());
        assertThat(figure.get("chanceAlone").asDouble()).isLessThan(
                Run.of("audit", silent, "--json").json().get("figures").get(0).get("chanceAlone").asDouble());
        Run.of("audit", silent, "--pull-scatter", "0.2").refused(2, "in percent or in the unit");
        Run.of("audit", silent, "--refit-scatter", "0.2%").refused(2, "--pull-scatter");
        Run.of("audit", silent, "--pull-scatter", "0%").refused(2, "--pull-scatter");

        Path records = folder.resolve("rig");
        Run.of("rig", "add", "demo-data/baselines.csv", "--records", records, "--name", "rollers 1", "--measure",
                "mean power 3000-6500 rpm in hp", "--level", "192hp", "--restrapped").succeeded();
        Path record;
        try (var files = Files.list(records)) {
            record = files.findFirst().orElseThrow();
        }
        assertThat(Run.of("audit", silent, "--record", record).words()).contains("at the scatter that is known (pulls 0.");
        Run.of("audit", silent, "--record", record, "--pull-scatter", "1%").refused(2, "give one of them");
    }

    /** A trace with the curve before alone is no curve after; by itself, as the trace of one side, it is. */
    @Test
    void theOnlyCurveOfATraceIsNotTakenForBoth() {
        SmallTest.write(folder.resolve("chart.json"), TraceJson.indented(trace()));
        SmallTest.write(folder.resolve("other.json"), TraceJson.indented(trace()));

        Run.of("audit", publication("{\"trace\": \"chart.json\"}", "{\"trace\": \"chart.json\"}"))
                .refused(3, "chart.json", "no curve of part B, which is the one after", "give each a trace of its own");
        Run.of("audit", publication("{\"trace\": \"chart.json\"}", "{\"trace\": \"other.json\"}")).succeeded();
    }

    /** 120 hp at 4000 rpm and 180.0 hp at the top, which stands in a row of its own. */
    @Test
    void ofALongTableThePeakIsStillRead() {
        StringBuilder table = new StringBuilder("Engine speed (rpm),Power (hp)\n");
        for (int row = 0; row < 40_000; row++) {
            table.append(2000 + row / 10.0).append(',').append(row == 30_001 ? "180.0" : "120.0").append('\n');
        }
        SmallTest.write(folder.resolve("long.csv"), table.toString());
        String file = "{\"file\": \"long.csv\"}";
        Path path = publication(file, file);
        SmallTest.write(path, SmallTest.read(path).replace("\"name\": \"power\", \"before\": \"121.5 hp\", \"after\": \"124.0 hp\", "
                + "\"at\": \"4000 rpm\"", "\"name\": \"peak power\", \"before\": \"180.0 hp\", \"after\": \"200.0 hp\""));

        JsonNode found = check(Run.of("audit", path, "--json").json(), "text-against-plot").get("found");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).get("side").asText()).isEqualTo("after");
        assertThat(found.get(0).get("shown").asDouble()).isEqualTo(180);
        JsonNode thinned = check(Run.of("audit", path, "--json").json(), "curve-thinned").get("found");
        assertThat(thinned).hasSize(2);
        assertThat(thinned.get(0).get("publishedPoints").asInt()).isEqualTo(40_000);
        assertThat(Run.of("audit", path).words()).contains("of the 40000 points of the curve of power before 5717 were looked at");
    }

    private static JsonNode check(JsonNode audited, String code) {
        return StreamSupport.stream(audited.get("checks").spliterator(), false).filter(check -> check.get("code").asText().equals(code))
                .findFirst().orElseThrow();
    }

    private static List<String> states(JsonNode audited, String state) {
        return StreamSupport.stream(audited.get("checks").spliterator(), false).filter(check -> check.get("state").asText().equals(state))
                .map(check -> check.get("code").asText()).toList();
    }

    private Path publication(String before, String after) {
        return SmallTest.write(folder.resolve("mine.json"), """
                {"publicationVersion": 1, "title": "x", "changed": "y",
                 "figures": [{"name": "power", "before": "121.5 hp", "after": "124.0 hp", "at": "4000 rpm"}],
                 "curves": [{"name": "power", "unit": "hp",
                   "before": %s,
                   "after": %s}],
                 "claims": []}
                """.formatted(before, after));
    }

    /** 60 to 180 hp over 2000 to 6000 rpm, read to half a horsepower. */
    private static Trace trace() {
        Axes axes = new Axes(new Axis(new AxisPoint(new PixelPoint(80, 440), 2000), new AxisPoint(new PixelPoint(480, 440), 6000),
                AxisScale.LINEAR, Units.RPM), new Axis(new AxisPoint(new PixelPoint(80, 440), 0), new AxisPoint(new PixelPoint(80, 40), 200),
                AxisScale.LINEAR, Units.HORSEPOWER));
        List<TracedPoint> points = IntStream.rangeClosed(0, 40).mapToObj(k -> new TracedPoint(2000 + 100 * k, 2, 60 + 3 * k, 0.5,
                new PixelPoint(80 + 10 * k, 320 - 6 * k), PointSource.FOLLOWED)).toList();
        return new Trace(new PictureFile("chart.png", "0123456789abcdef".repeat(4), 800, 500), axes,
                List.of(new TracedCurve(Part.A, "#c81e28", 2, points, List.of())));
    }
}

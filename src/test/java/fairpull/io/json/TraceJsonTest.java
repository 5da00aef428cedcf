package fairpull.io.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.InputException;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.AxisPoint;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.PictureFile;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.unit.Units;
import fairpull.io.table.TraceWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TraceJsonTest {
    private static final Trace TRACE = new Trace(new PictureFile("chart.png", "0123456789abcdef".repeat(4), 800, 500),
            new Axes(new Axis(new AxisPoint(new PixelPoint(80, 440), 1000), new AxisPoint(new PixelPoint(760, 440), 7000), AxisScale.LINEAR,
                    Units.RPM), new Axis(new AxisPoint(new PixelPoint(80, 440), 1), new AxisPoint(new PixelPoint(80, 30.5), 200),
                    AxisScale.LOGARITHMIC, Units.HORSEPOWER)),
            List.of(new TracedCurve(Part.A, "#c81e28", 2.5, List.of(
                            new TracedPoint(2000.25, 1.8, 51.5, 0.3, new PixelPoint(193.5, 210.125), PointSource.FOLLOWED),
                            new TracedPoint(2010, 1.8, 52.5, 0.9, new PixelPoint(194.5, 209), PointSource.BRIDGED)),
                            List.of(new LineGap(194, 195, LineGap.Reason.COVERED))),
                    new TracedCurve(Part.B, "#1e5ab4", 2, List.of(
                            new TracedPoint(2000, 1.8, 50, 0.3, new PixelPoint(193.5, 212), PointSource.PLACED)), List.of())));

    @Test
    void whatIsWrittenReadsBack() {
        String text = TraceJson.indented(TRACE);
        assertThat(TraceJson.read(text, "trace.json")).isEqualTo(TRACE);
        assertThat(TraceJson.indented(TraceJson.read(text, "trace.json"))).isEqualTo(text);
        assertThat(text).contains("\"traceVersion\" : 1", "\"unit\" : \"rpm\"", "\"scale\" : \"logarithmic\"", "\"source\" : \"bridged\"");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"traceVersion\" : 1 | \"traceVersion\" : 2 | trace version 2 is not known",
        "\"traceVersion\" : 1 | \"version\" : 1 | no traceVersion",
        "0123456789abcdef0 | 0123456789ABCDEF0 | 64 hexadecimal digits",
        "\"value\" : 7000 | \"value\" : 1000 | same value",
        "\"part\" : \"B\" | \"part\" : \"A\" | one a part",
        "\"#c81e28\" | \"red\" | #rrggbb",
        "\"xError\" : 1.8 | \"xError\" : -1 | 0 or more",
        "\"widthPx\" : 800 | \"widthPx\" : 800000 | 1 …"})
    void whatCannotBeIsRefusedInOneLine(String there, String instead, String words) {
        String text = TraceJson.indented(TRACE);
        assertThat(text).contains(there);
        assertThatThrownBy(() -> TraceJson.read(text.replace(there, instead), "trace.json")).isInstanceOfSatisfying(InputException.class,
                refused -> assertThat(refused.oneLine()).startsWith("trace.json").contains(words).doesNotContain("\n"));
    }

    @Test
    void theTableHasARowAPointWithUnitsInItsHead() {
        assertThat(TraceWriter.text(TRACE).lines()).hasSize(4).startsWith(
                "curve,x (rpm),standard error of x (rpm),y (hp),standard error of y (hp),pixels from the left,pixels from the top,source",
                "A,2000.25,1.8,51.5,0.3,193.5,210.125,followed");
    }
}

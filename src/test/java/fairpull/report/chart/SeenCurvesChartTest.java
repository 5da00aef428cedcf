package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.CurvePair;
import fairpull.domain.audit.CurveSeen;
import fairpull.domain.audit.CurveSource;
import fairpull.domain.audit.Publication;
import fairpull.domain.pull.Samples;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Both curves of a publication with their axes, told apart by line as well as by letter, and how far off they may have been read. */
class SeenCurvesChartTest {
    private static final int POINTS = 41;

    /** From 2000 rpm in steps of 100. */
    private static CurveSeen curve(DoubleUnaryOperator kw, double errorKw) {
        double[] speeds = IntStream.range(0, POINTS).mapToDouble(place -> Units.RPM.toSi(2000 + 100 * place)).toArray();
        double[] values = IntStream.range(0, POINTS).mapToDouble(place -> Units.KILOWATT.toSi(kw.applyAsDouble(2000 + 100 * place))).toArray();
        Samples none = Samples.of(new double[POINTS]);
        return new CurveSeen(Units.KILOWATT, Units.RPM, Samples.of(speeds), Samples.of(values), none,
                none.map(zero -> Units.KILOWATT.toSi(errorKw)));
    }

    private static Drawing chart(double errorKw) {
        CurveSource.Traced trace = new CurveSource.Traced("chart-trace.json");
        Publication.Curves published = new Publication.Curves("power", Units.KILOWATT, Units.RPM, trace, trace);
        CurvePair pair = new CurvePair(published, curve(rpm -> 20 + rpm / 50, errorKw), curve(rpm -> 24 + rpm / 50, errorKw));
        return SeenCurvesChart.of(pair).wide(Drawing.WIDTH);
    }

    private static <S extends Shape> List<S> of(Drawing chart, Class<S> kind) {
        return chart.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static List<String> words(Drawing chart) {
        return of(chart, Shape.Words.class).stream().map(Shape.Words::text).toList();
    }

    @Test
    void aIsDrawnThroughAndBBrokenAndBothHaveTheirLettersUnitsAndSpeeds() {
        Drawing chart = chart(0.5);
        List<Shape.Path> lines = of(chart, Shape.Path.class);
        assertThat(lines).extracting(Shape.Path::dash).containsExactly(Shape.Dash.SOLID, Shape.Dash.BROKEN);
        assertThat(lines).extracting(Shape.Path::role).containsExactly(Role.A, Role.B);
        assertThat(lines.get(1).width()).isGreaterThan(lines.get(0).width());
        assertThat(words(chart)).contains("A", "B", "power, kW").anyMatch(text -> text.endsWith("rpm"));
        assertThat(chart.description()).contains("A runs from 60", "B runs from 64", "2000 to 6000 rpm");
        // 4 kW apart all the way, which on paper is the same distance
        double first = lines.get(0).points().get(0).y() - lines.get(1).points().get(0).y();
        assertThat(first).isPositive();
    }

    @Test
    void theBandReachesTwoReadingErrorsToBothSides() {
        Drawing chart = chart(1);
        List<Shape.Polygon> bands = of(chart, Shape.Polygon.class);
        assertThat(bands).hasSize(2);
        List<Shape.Path> lines = of(chart, Shape.Path.class);
        double fourKw = lines.get(0).points().get(0).y() - lines.get(1).points().get(0).y();
        List<Point> corners = bands.get(0).corners();
        assertThat(corners.get(corners.size() - 1).y() - corners.get(0).y()).as("from +2 to -2 kW").isCloseTo(fourKw, within(1e-6));
        assertThat(words(chart)).anyMatch(text -> text.contains("A 1\u202fkW, B 1\u202fkW"));
    }

    @Test
    void curvesOutOfTablesHaveNoBandAndSayWhy() {
        Drawing chart = chart(0);
        assertThat(of(chart, Shape.Polygon.class)).isEmpty();
        assertThat(words(chart)).anyMatch(text -> text.startsWith("no reading error"));
    }
}

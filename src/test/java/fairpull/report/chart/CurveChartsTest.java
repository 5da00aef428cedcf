package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.report.CurveExamples;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CurveChartsTest {
    private static final String FOOT = "SAE J1349 · bandwidth ± 100 rpm · 95 % for all speeds together · 25 pulls, 5 installs · seal "
            + "7KD2-9QXM-41";

    @Test
    void chartsOfAnySizeAreLegible() {
        CurveExamples.all().values().forEach(curve -> drawings(curve).forEach(LayoutTest::assertLegible));
        Random random = new Random(20260314);
        for (int round = 0; round < 60; round++) {
            double size = Math.pow(10, random.nextInt(7) - 3);
            double at = 2000 + 4000 * random.nextDouble();
            SpeedGrid grid = new SpeedGrid(Units.RPM.toSi(500 + random.nextInt(3000)), Units.RPM.toSi(20 + random.nextInt(80)),
                    20 + random.nextInt(150));
            CurveFinding curve = CurveExamples.finding("ABABABABAB".substring(0, 2 + random.nextInt(9)), 1 + random.nextInt(4), grid,
                    Unit.asTyped(round % 2 == 0 ? "hp" : "a unit of a kind that nobody has met before"),
                    rpm -> size * Math.sin((rpm - at) / 900), Optional.empty());
            drawings(curve).forEach(LayoutTest::assertLegible);
        }
    }

    @Test
    void aAndBAreToldApartByLetterAndLineNotByColourAlone() {
        Drawing drawing = CurvesChart.of(CurveExamples.gain(), FOOT).wide(Drawing.WIDTH);
        List<Shape.Path> paths = paths(drawing);

        Shape.Path a = paths.stream().filter(path -> path.role() == Role.A && path.width() > 1).findFirst().orElseThrow();
        Shape.Path b = paths.stream().filter(path -> path.role() == Role.B && path.width() > 1).findFirst().orElseThrow();
        assertThat(a.dash()).isEqualTo(Shape.Dash.SOLID);
        assertThat(b.dash()).isEqualTo(Shape.Dash.BROKEN);
        assertThat(b.width()).isGreaterThan(1.5 * a.width());
        assertThat(words(drawing)).extracting(Shape.Words::text).contains("A", "B", "power, hp", "3000\u202frpm");
        assertThat(paths.stream().filter(path -> path.role() == Role.A_FAINT || path.role() == Role.B_FAINT)).hasSize(25);
    }

    @Test
    void whatIsThinnedOutLiesWithinATwentiethOfAMillimetreOfTheLineOnPaper() {
        Random random = new Random(20260315);
        List<Point> points = IntStream.range(0, 2000).mapToObj(place -> new Point(place * 0.35,
                100 + 40 * Math.sin(place / 70.0) + 0.05 * random.nextGaussian())).toList();

        List<Point> thin = Thinning.of(points);

        assertThat(thin.size()).isLessThan(200);
        assertThat(thin.get(0)).isEqualTo(points.get(0));
        assertThat(thin.get(thin.size() - 1)).isEqualTo(points.get(points.size() - 1));
        for (Point point : points) {
            int after = IntStream.range(1, thin.size()).filter(place -> thin.get(place).x() >= point.x()).findFirst().orElseThrow();
            Point from = thin.get(after - 1);
            Point to = thin.get(after);
            double on = from.y() + (to.y() - from.y()) * (point.x() - from.x()) / (to.x() - from.x());
            double slope = (to.y() - from.y()) / (to.x() - from.x());
            assertThat(Math.abs(point.y() - on) / Math.hypot(1, slope)).isLessThanOrEqualTo(Thinning.TOLERANCE + 1e-9);
        }
    }

    @Test
    void theBarStandsOverTheSpeedsThatAreShown() {
        CurveFinding curve = CurveExamples.gain();
        Drawing drawing = DifferenceChart.of(curve, OptionalDouble.of(3), FOOT).wide(Drawing.WIDTH);

        Bounds bar = shapes(drawing, Shape.Area.class).stream().filter(area -> area.role() == Role.INK).findFirst().orElseThrow().bounds();
        List<Shape.Line> ticks = shapes(drawing, Shape.Line.class).stream()
                .filter(line -> line.role() == Role.SOFT && line.from().x() == line.to().x()).toList();
        double perRpm = (ticks.get(1).from().x() - ticks.get(0).from().x()) / 1000;
        double lowRpm = 3000 + (bar.x() - ticks.get(0).from().x()) / perRpm;
        assertThat(lowRpm).isCloseTo(Units.RPM.fromSi(curve.gains().get(0).lowRadPerS()), within(0.01));
        assertThat(bar.width() / perRpm).isCloseTo(6800 - 4025, within(0.01));
        assertThat(words(drawing)).extracting(Shape.Words::text).contains("gain shown from 4025 to 6800\u202frpm", "worthwhile +3\u202fhp");
    }

    @Test
    void aLossHasAnOpenBarAndNothingShownIsSaid() {
        Drawing both = DifferenceChart.of(CurveExamples.lossAndGain(), OptionalDouble.empty(), FOOT).wide(Drawing.WIDTH);
        assertThat(shapes(both, Shape.Frame.class)).hasSize(1);
        Drawing none = DifferenceChart.of(CurveExamples.nothing(), OptionalDouble.empty(), FOOT).wide(Drawing.WIDTH);
        assertThat(shapes(none, Shape.Frame.class)).isEmpty();
        assertThat(words(none)).extracting(Shape.Words::text).contains("no change is shown at any speed");
    }

    @Test
    void whereNoSpeedCouldBeJudgedTheBandIsBroken() {
        CurveFinding whole = CurveExamples.gain();
        List<CurvePoint> points = new ArrayList<>(whole.points());
        points.subList(60, 70).clear();
        CurveFinding broken = with(whole, points);

        assertThat(shapes(DifferenceChart.of(whole, OptionalDouble.empty(), FOOT).wide(Drawing.WIDTH), Shape.Polygon.class)).hasSize(1);
        assertThat(shapes(DifferenceChart.of(broken, OptionalDouble.empty(), FOOT).wide(Drawing.WIDTH), Shape.Polygon.class)).hasSize(2);
    }

    @Test
    void aBandThatIsOpenOnOneSideReachesTheEdge() {
        CurveFinding whole = CurveExamples.gain();
        CurveFinding open = with(whole, whole.points().stream().map(point -> new CurvePoint(point.speedRadPerS(), point.meanA(),
                point.meanB(), point.estimate(), point.own(), new Interval(0.95, point.band().low(), Double.POSITIVE_INFINITY))).toList());

        Drawing drawing = DifferenceChart.of(open, OptionalDouble.of(3), FOOT).wide(Drawing.WIDTH);

        LayoutTest.assertLegible(drawing);
        assertThat(shapes(drawing, Shape.Polygon.class).get(0).corners()).allSatisfy(corner -> assertThat(corner.y()).isBetween(0.0, 400.0));
    }

    @Test
    void residualsOfEachInstallSumToNothing() {
        Drawing drawing = ResidualsChart.draw(CurveExamples.gain(), FOOT);

        assertThat(words(drawing)).extracting(Shape.Words::text).contains("A1", "B1", "A2", "B2", "A3");
        assertThat(paths(drawing).stream().filter(path -> path.role() == Role.A || path.role() == Role.B)).hasSize(5);
    }

    private static CurveFinding with(CurveFinding curve, List<CurvePoint> points) {
        return new CurveFinding(curve.unit(), curve.bandwidthRadPerS(), curve.declared(), curve.level(), curve.criticalValue(),
                curve.degreesOfFreedom(), curve.draws(), curve.recordUsed(), points, curve.gains(), curve.losses(), curve.shareShown(),
                curve.figures(), curve.transientGain(), curve.curves());
    }

    private static List<Drawing> drawings(CurveFinding curve) {
        List<Chart> charts = List.of(CurvesChart.of(curve, FOOT), DifferenceChart.of(curve, OptionalDouble.of(3), FOOT),
                DifferenceChart.of(curve, OptionalDouble.of(-3), FOOT), Chart.fixed(ResidualsChart.draw(curve, FOOT)));
        return charts.stream().flatMap(chart -> Stream.of(chart.wide(Drawing.WIDTH), chart.wide(577), chart.wide(Chart.NARROWEST))).toList();
    }

    private static List<Shape.Path> paths(Drawing drawing) {
        return shapes(drawing, Shape.Path.class);
    }

    private static List<Shape.Words> words(Drawing drawing) {
        return shapes(drawing, Shape.Words.class);
    }

    private static <S extends Shape> List<S> shapes(Drawing drawing, Class<S> kind) {
        return Stream.of(drawing).flatMap(one -> one.shapes().stream()).filter(kind::isInstance).map(kind::cast).toList();
    }
}

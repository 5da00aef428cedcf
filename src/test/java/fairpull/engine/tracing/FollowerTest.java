package fairpull.engine.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.tracing.FollowedLine;
import fairpull.domain.tracing.LineEnd;
import fairpull.domain.tracing.LineGap;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class FollowerTest {
    private static final Color RED = new Color(200, 30, 40);
    private static final Color BLUE = new Color(30, 90, 180);
    private static final DoubleUnaryOperator FALLING = rpm -> 180 - DrawnChart.power(rpm) * 0.6;

    private static DrawnChart chart() {
        return new DrawnChart(800, 500, true, Color.WHITE).grid(new Color(205, 205, 205));
    }

    private static FollowedLine follow(DrawnChart chart, DoubleUnaryOperator power, double rpm) {
        return Follower.follow(chart.picture(), chart.on(power, rpm), Follower.USUAL_GAP_PX).orElseThrow();
    }

    private static void assertRight(DrawnChart chart, FollowedLine line, DoubleUnaryOperator power, double withinPx) {
        for (LinePoint point : line.points()) {
            assertThat(point.at().yPx()).as("at " + chart.rpm(point.at().xPx())).isCloseTo(chart.yPx(power.applyAsDouble(chart.rpm(
                    point.at().xPx()))), within(withinPx));
        }
    }

    @Test
    void aSmoothLineIsReadToAFractionOfAPixelFromEndToEnd() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2.5);
        FollowedLine line = follow(chart, DrawnChart::power, 4000);
        assertRight(chart, line, DrawnChart::power, 0.35);
        assertThat(line.widthPx()).isCloseTo(2.5, within(0.15));
        assertThat(chart.rpm(line.left().at().xPx())).isCloseTo(DrawnChart.FROM, within(20.0));
        assertThat(chart.rpm(line.right().at().xPx())).isCloseTo(DrawnChart.TO, within(20.0));
        assertThat(line.left().isDoubtful()).isFalse();
        assertThat(line.gaps()).isEmpty();
    }

    @Test
    void aLineCrossedByOneOfAnotherColourGoesOnAsItWent() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2.5).curve(FALLING, BLUE, 2.5);
        FollowedLine line = follow(chart, DrawnChart::power, 5600);
        assertRight(chart, line, DrawnChart::power, 0.6);
        assertThat(chart.rpm(line.left().at().xPx())).isCloseTo(DrawnChart.FROM, within(20.0));
        assertThat(line.gaps()).extracting(LineGap::reason).containsOnly(LineGap.Reason.COVERED);
        assertThat(line.points()).anyMatch(point -> point.source() == PointSource.BRIDGED);
    }

    /** The curves cross at 150 kW, first a little above 4000 rpm, at an angle of two to three degrees. */
    @Test
    void linesThatCrossAtASmallAngleAreReadRightOrTheFollowingEnds() {
        DoubleUnaryOperator near = rpm -> DrawnChart.power(rpm) * 1.06 - 7;
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 3).curve(near, BLUE, 3);
        assertRight(chart, follow(chart, DrawnChart::power, 6000), DrawnChart::power, 2);
        assertRight(chart, follow(chart, near, 6000), near, 2);
    }

    @Test
    void aSecondLineOfTheSameColourEndsItWhereTheyMeet() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2.5).curve(FALLING, RED, 2.5);
        FollowedLine line = follow(chart, DrawnChart::power, 5600);
        assertThat(line.left().reason()).isEqualTo(LineEnd.Reason.MEETS_SAME_COLOUR);
        double crossing = chart.rpm(line.left().at().xPx());
        assertThat(DrawnChart.power(crossing)).isCloseTo(FALLING.applyAsDouble(crossing), within(8.0));
        assertRight(chart, line, DrawnChart::power, 0.6);
        FollowedLine beyond = follow(chart, DrawnChart::power, 2000);
        assertThat(beyond.right().reason()).isEqualTo(LineEnd.Reason.MEETS_SAME_COLOUR);
    }

    @Test
    void dashesAreBridgedUpToTheGapThatIsAllowed() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2, 12, 10);
        PixelPoint click = nearestDrawn(chart);
        FollowedLine line = Follower.follow(chart.picture(), click, 16).orElseThrow();
        assertRight(chart, line, DrawnChart::power, 0.7);
        assertThat(chart.rpm(line.left().at().xPx())).isCloseTo(DrawnChart.FROM, within(60.0));
        assertThat(line.gaps()).hasSizeGreaterThan(10).extracting(LineGap::reason).contains(LineGap.Reason.INTERRUPTED);
        FollowedLine one = Follower.follow(chart.picture(), click, 2).orElseThrow();
        assertThat(one.points()).hasSizeLessThan(16);
    }

    private static PixelPoint nearestDrawn(DrawnChart chart) {
        for (double rpm = 4000; rpm < 4500; rpm += 5) {
            PixelPoint place = chart.on(DrawnChart::power, rpm);
            if (Lab.of(chart.picture().rgb(place.column(), place.row())).distance(Lab.of(0xFFFFFF)) > 60) {
                return place;
            }
        }
        throw new AssertionError("no dash");
    }

    @Test
    void aSteepStepIsFollowedUpAndOn() {
        DoubleUnaryOperator step = rpm -> 40 + 110 / (1 + Math.exp(-(rpm - 4000) / 8));
        DrawnChart chart = chart().curve(step, RED, 2);
        FollowedLine line = follow(chart, step, 3000);
        assertThat(chart.rpm(line.right().at().xPx())).isCloseTo(DrawnChart.TO, within(20.0));
        LinePoint last = line.points().get(line.points().size() - 1);
        assertThat(chart.power(last.at())).isCloseTo(150, within(1.0));
        assertThat(line.points()).anyMatch(point -> Math.abs(point.slope()) > 4);
    }

    @Test
    void aVerticalLineOfTheSameColourIsCrossedWhereTheLineGoesOn() {
        DrawnChart chart = new DrawnChart(800, 500, true, Color.WHITE).curve(DrawnChart::power, Color.BLACK, 2);
        chart.pen().setStroke(new BasicStroke(1));
        double x = Math.floor(chart.xPx(3000)) + 0.5;
        chart.pen().draw(new Line2D.Double(x, 40, x, 440));
        FollowedLine line = follow(chart, DrawnChart::power, 5000);
        assertRight(chart, line, DrawnChart::power, 0.6);
        assertThat(chart.rpm(line.left().at().xPx())).isCloseTo(DrawnChart.FROM, within(20.0));
        assertThat(line.gaps()).extracting(LineGap::reason).containsExactly(LineGap.Reason.STROKE);
    }

    @Test
    void aLegendOfTheSameColourIsLeftAlone() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2).legend(RED, BLUE, 2);
        assertRight(chart, follow(chart, DrawnChart::power, 4000), DrawnChart::power, 0.4);
    }

    @Test
    void thereIsNoLineOnEmptyGroundOrOutside() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2);
        assertThat(Follower.follow(chart.picture(), new PixelPoint(chart.xPx(5500), chart.yPx(38)), 16)).isEmpty();
        assertThat(Follower.follow(chart.picture(), new PixelPoint(-3, 10), 16)).isEmpty();
        assertThat(Follower.follow(chart.picture(), new PixelPoint(4000, 10), 16)).isEmpty();
        assertThatThrownBy(() -> Follower.follow(chart.picture(), new PixelPoint(5, 5), 201)).hasMessageContaining("0 … 200");
    }

    @Test
    void aClickIsSnappedToTheMiddleOfTheLine() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 3);
        int colour = follow(chart, DrawnChart::power, 4000).colour();
        PixelPoint on = chart.on(DrawnChart::power, 3000);
        LinePoint snapped = Snapping.nearest(chart.picture(), colour, on.moved(0, 5)).orElseThrow();
        assertThat(snapped.at().yPx()).isCloseTo(chart.yPx(DrawnChart.power(chart.rpm(snapped.at().xPx()))), within(0.3));
        assertThat(snapped.source()).isEqualTo(PointSource.SNAPPED);
        assertThat(Snapping.nearest(chart.picture(), colour, on.moved(0, 40))).isEmpty();
        assertThat(Snapping.nearest(chart.picture(), BLUE.getRGB() & 0xFFFFFF, on)).isEmpty();
    }

    @Test
    void thinningKeepsEndsAndMovesNothing() {
        DrawnChart chart = chart().curve(DrawnChart::power, RED, 2);
        FollowedLine line = follow(chart, DrawnChart::power, 4000);
        FollowedLine thin = Thinning.of(line, 10);
        assertThat(line.points()).containsAll(thin.points());
        assertThat(thin.points().get(0)).isEqualTo(line.points().get(0));
        assertThat(thin.points()).hasSizeBetween(line.points().size() / 10 - 1, line.points().size() / 10 + 3);
    }
}

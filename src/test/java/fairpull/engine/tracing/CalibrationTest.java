package fairpull.engine.tracing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.AxisPoint;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.tracing.PointSource;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.unit.Units;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    private static Axis axis(double x1, double y1, double first, double x2, double y2, double second, AxisScale scale) {
        return new Axis(new AxisPoint(new PixelPoint(x1, y1), first), new AxisPoint(new PixelPoint(x2, y2), second), scale, Units.ONE);
    }

    /** Across 100 … 500 px stand 2000 … 6000, from 400 up to 100 px 0 … 150. */
    private static Axes square() {
        return new Axes(axis(100, 400, 2000, 500, 400, 6000, AxisScale.LINEAR), axis(100, 400, 0, 100, 100, 150, AxisScale.LINEAR));
    }

    @Test
    void linearAxesGoInEqualSteps() {
        Calibration calibration = Calibration.of(square());
        assertThat(calibration.x(new PixelPoint(300, 50))).isCloseTo(4000, within(1e-9));
        assertThat(calibration.y(new PixelPoint(7, 250))).isCloseTo(75, within(1e-9));
        assertThat(calibration.y(new PixelPoint(7, 40))).isCloseTo(180, within(1e-9));
    }

    @Test
    void logarithmicAxesGoInEqualRatios() {
        Axes axes = new Axes(axis(100, 400, 10, 500, 400, 1000, AxisScale.LOGARITHMIC), square().y());
        assertThat(Calibration.of(axes).x(new PixelPoint(300, 0))).isCloseTo(100, within(1e-9));
        assertThat(Calibration.of(axes).x(new PixelPoint(700, 0))).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void aTurnedPictureIsTurnedBack() {
        double turn = Math.toRadians(3);
        Axes axes = new Axes(turned(square().x(), turn), turned(square().y(), turn));
        Calibration calibration = Calibration.of(axes);
        PixelPoint place = turned(new PixelPoint(420, 180), turn);
        assertThat(calibration.x(place)).isCloseTo(5200, within(1e-6));
        assertThat(calibration.y(place)).isCloseTo(110, within(1e-6));
    }

    private static Axis turned(Axis axis, double turn) {
        return new Axis(new AxisPoint(turned(axis.first().at(), turn), axis.first().value()), new AxisPoint(turned(axis.second().at(), turn),
                axis.second().value()), axis.scale(), axis.unit());
    }

    private static PixelPoint turned(PixelPoint place, double turn) {
        return new PixelPoint(place.xPx() * Math.cos(turn) - place.yPx() * Math.sin(turn), place.xPx() * Math.sin(turn) + place.yPx()
                * Math.cos(turn));
    }

    @Test
    void clicksBesideTheAxisAreForgiven() {
        Axes axes = new Axes(axis(100, 402, 2000, 500, 400, 6000, AxisScale.LINEAR), square().y());
        assertThat(Calibration.of(axes).y(new PixelPoint(500, 250))).isCloseTo(75, within(1e-9));
    }

    @Test
    void axesThatStandAskewAreRefusedInWords() {
        Axes tilted = new Axes(axis(100, 430, 2000, 500, 400, 6000, AxisScale.LINEAR), square().y());
        assertThatThrownBy(() -> Calibration.of(tilted)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("not square");
        Axes steep = new Axes(axis(100, 600, 2000, 500, 400, 6000, AxisScale.LINEAR), square().y());
        assertThatThrownBy(() -> Calibration.of(steep)).hasMessageContaining("the x axis lie 27° off level");
    }

    /**
     * By hand: 10 units and ½ unit a pixel. A followed point on a line 3 px wide of slope 1, half way up the y axis and half way across: down
     * the column √((1/12 + 9/36) · 2) = 0.8165 px, the axis √((¼ + ¼)/12) = 0.2041 px.
     */
    @Test
    void readingErrorsFollowTheirFormula() {
        TracedPoint read = Calibration.of(square()).read(new LinePoint(new PixelPoint(300, 250), 1, PointSource.FOLLOWED), 3);
        assertThat(read.xError()).isCloseTo(10 * 0.204124, within(1e-5));
        assertThat(read.yError()).isCloseTo(0.5 * Math.hypot(0.816497, 0.204124), within(1e-5));
        TracedPoint placed = Calibration.of(square()).read(new LinePoint(new PixelPoint(300, 250), 0, PointSource.PLACED), 3);
        assertThat(placed.yError()).isCloseTo(0.5 * Math.hypot(Math.sqrt(10 / 12.0), 0.204124), within(1e-5));
    }

    /** On a logarithmic axis of two decades in 400 px a pixel is ln(100)/400 = 1.151 % of the value. */
    @Test
    void onALogarithmicAxisTheErrorGrowsWithTheValue() {
        Axes axes = new Axes(square().x(), axis(100, 400, 10, 100, 0, 1000, AxisScale.LOGARITHMIC));
        TracedPoint low = Calibration.of(axes).read(new LinePoint(new PixelPoint(300, 400), 0, PointSource.FOLLOWED), 0);
        TracedPoint high = Calibration.of(axes).read(new LinePoint(new PixelPoint(300, 0), 0, PointSource.FOLLOWED), 0);
        assertThat(low.yError() / low.y()).isCloseTo(0.011513 * Math.sqrt(2 / 12.0), within(1e-5));
        assertThat(high.yError() / high.y()).isCloseTo(low.yError() / low.y(), within(1e-9));
    }

    @Test
    void anAxisThatCannotBeIsRefused() {
        assertThatThrownBy(() -> axis(0, 0, 5, 100, 0, 5, AxisScale.LINEAR)).hasMessageContaining("same value");
        assertThatThrownBy(() -> axis(0, 0, 0, 100, 0, 5, AxisScale.LOGARITHMIC)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> axis(0, 0, 1, 3, 0, 5, AxisScale.LINEAR)).hasMessageContaining("closer than 10 pixels");
    }
}

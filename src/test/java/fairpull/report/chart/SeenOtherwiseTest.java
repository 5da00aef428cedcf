package fairpull.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.day.DayClock;
import fairpull.domain.unit.UnitSystem;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A and B by somebody with green-blind eyes, and by everybody on a copy in grey. */
class SeenOtherwiseTest {
    /**
     * Deuteranopia on linear sRGB: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, A Physiologically-based Model for Simulation of Color
     * Vision Deficiency, IEEE Trans. Visualization and Computer Graphics 15 (2009) 1291–1298, doi:10.1109/TVCG.2009.113; the table of the
     * authors' page for deuteranomaly of severity 1.0.
     */
    private static final double[][] DEUTERANOPIA = {
            {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}};
    /** Linear sRGB to CIE XYZ under D65, IEC 61966-2-1 (from memory); each row sums to the white point. */
    private static final double[][] XYZ = {
            {0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}};
    /** Far beyond the just noticeable difference of about 2.3 in CIE 1976 ΔE (from memory); lines and hatching are thin. */
    private static final double CLEARLY = 20;

    static Stream<Palette> palettes() {
        return Stream.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void greenBlindEyesTellAFromBAndBothFromTheGate(Palette palette) {
        assertThat(difference(seen(palette, Role.A), seen(palette, Role.B))).as("A and B").isGreaterThan(CLEARLY);
        assertThat(difference(seen(palette, Role.B), seen(palette, Role.GATE))).as("B and gate").isGreaterThan(CLEARLY);
    }

    /**
     * A copy in grey keeps the two colours apart only by how light they are (PaletteTest), so the form says it besides: on the day strip A
     * is open ground, B is filled and hatched.
     */
    @ParameterizedTest
    @MethodSource("palettes")
    void onACopyInGreyTheHatchingOfBTellsItFromTheOpenA(Palette palette) {
        PlanStrip strip = PlanStrip.draw(DayClock.of(StartingPlan.in(UnitSystem.METRIC).sequence()), Optional.empty(), Optional.empty(), 900);
        BufferedImage copy = new BufferedImage(900, (int) Math.ceil(strip.drawing().height()), BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = copy.createGraphics();
        g.setColor(Color.decode(palette.colour(Role.CARD)));
        g.fillRect(0, 0, copy.getWidth(), copy.getHeight());
        Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
        DrawingPainter.paint(strip.drawing(), g, palette, font, font);
        g.dispose();
        for (PlanStrip.Region region : strip.regions()) {
            double covered = covered(copy, region.bounds());
            if (region.install().startsWith("A")) {
                assertThat(covered).as(region.install()).isLessThan(0.4);
            } else {
                assertThat(covered).as(region.install()).isGreaterThan(0.9);
            }
        }
    }

    /** The share of a block, inside its outline, whose grey is not that of the card: by 4 of 255 levels or more. */
    private static double covered(BufferedImage copy, Bounds block) {
        int ground = copy.getRaster().getSample(1, 1, 0);
        int covered = 0;
        int all = 0;
        for (int x = (int) block.x() + 3; x < block.right() - 3; x++) {
            for (int y = (int) block.y() + 3; y < block.bottom() - 3; y++) {
                all++;
                covered += Math.abs(copy.getRaster().getSample(x, y, 0) - ground) >= 4 ? 1 : 0;
            }
        }
        return (double) covered / all;
    }

    /** Known pairs of the scale: black to white is 100, a colour to itself 0; red and green of the screen grow alike to green-blind eyes. */
    @Test
    void theMeasureOfDifferenceIsThatOfTheStandard() {
        double[] red = {1, 0, 0};
        double[] leaf = {0.25, 0.25, 0};
        assertThat(difference(new double[] {0, 0, 0}, new double[] {1, 1, 1})).isCloseTo(100, within(0.01));
        assertThat(difference(red, red)).isZero();
        assertThat(difference(times(DEUTERANOPIA, red), times(DEUTERANOPIA, leaf))).isLessThan(difference(red, leaf) / 3);
        for (double[] row : DEUTERANOPIA) {
            assertThat(row[0] + row[1] + row[2]).as("white stays white").isCloseTo(1, within(1e-5));
        }
    }

    private static double[] seen(Palette palette, Role role) {
        int rgb = Integer.parseInt(palette.colour(role).substring(1), 16);
        double[] linear = IntStream.of(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255).mapToDouble(channel -> linear(channel / 255.0)).toArray();
        double[] seen = times(DEUTERANOPIA, linear);
        return IntStream.range(0, 3).mapToDouble(channel -> Math.max(0, Math.min(1, seen[channel]))).toArray();
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static double[] times(double[][] matrix, double[] vector) {
        return Stream.of(matrix).mapToDouble(row -> row[0] * vector[0] + row[1] * vector[1] + row[2] * vector[2]).toArray();
    }

    /** CIE 1976 ΔE of two colours in linear sRGB. */
    private static double difference(double[] one, double[] other) {
        double[] first = lab(one);
        double[] second = lab(other);
        return Math.sqrt(IntStream.range(0, 3).mapToDouble(axis -> Math.pow(first[axis] - second[axis], 2)).sum());
    }

    private static double[] lab(double[] linear) {
        double[] white = times(XYZ, new double[] {1, 1, 1});
        double[] xyz = times(XYZ, linear);
        double[] f = IntStream.range(0, 3).mapToDouble(axis -> root(xyz[axis] / white[axis])).toArray();
        return new double[] {116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])};
    }

    private static double root(double share) {
        return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
    }
}

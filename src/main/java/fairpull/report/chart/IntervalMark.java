package fairpull.report.chart;

import fairpull.domain.finding.Finding;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The change with its interval as a line in a list. The worthwhile gain has the same width in every line, so that lines with other units
 * can be read below each other; where none is named, the interval itself sets the width.
 */
public final class IntervalMark {
    /** As wide as a column of a list. */
    public static final double WIDTH = 190;
    /** As high as two lines of type. */
    public static final double HEIGHT = 36;
    private static final double MIDDLE = HEIGHT / 2;
    /** So many worthwhile gains fit on either side of zero. */
    private static final double REACH = 3;
    private static final double SIDE = 9;

    private final double change;
    private final double low;
    private final double high;
    private final Scale scale;
    private final List<Shape> shapes = new ArrayList<>();

    private IntervalMark(double change, double low, double high, double reach) {
        this.change = change;
        this.low = low;
        this.high = high;
        this.scale = new Scale(-reach, reach, SIDE, WIDTH - SIDE);
    }

    /** {@return the line, where there is an interval} */
    public static Optional<Drawing> draw(Finding finding) {
        return finding.estimate().flatMap(estimate -> finding.interval().map(interval -> {
            OptionalDouble gain = finding.settings().worthwhileGain();
            double ends = Math.max(Math.abs(estimate.change()), Math.max(finite(interval.low()), finite(interval.high())));
            double reach = gain.isPresent() ? REACH * gain.getAsDouble() : ends > 0 ? ends * 1.1 : 1;
            Numbers numbers = Numbers.of(finding);
            return new IntervalMark(estimate.change(), interval.low(), interval.high(), reach).draw(gain,
                    "Change " + numbers.signed(estimate.change()) + ", interval " + numbers.signedBare(interval.low()) + " … "
                            + numbers.signed(interval.high()));
        }));
    }

    private static double finite(double end) {
        return Double.isInfinite(end) ? 0 : Math.abs(end);
    }

    private Drawing draw(OptionalDouble gain, String description) {
        gain.ifPresent(edge -> {
            shapes.add(new Shape.Area(new Bounds(scale.at(-edge), 4, scale.at(edge) - scale.at(-edge), HEIGHT - 8), 0, Role.GATE_FILL));
            for (double end : new double[] {-edge, edge}) {
                upright(scale.at(end), Role.GATE, 1, Shape.Dash.BROKEN);
            }
        });
        upright(scale.at(0), Role.INK, 1.2, Shape.Dash.SOLID);
        double from = Math.max(scale.from(), Math.min(scale.to(), low));
        double to = Math.max(scale.from(), Math.min(scale.to(), high));
        shapes.add(new Shape.Line(new Point(scale.at(from), MIDDLE), new Point(scale.at(to), MIDDLE), Role.B, 3, Shape.Dash.SOLID));
        if (low < scale.from()) {
            arrow(SIDE, -SIDE);
        }
        if (high > scale.to()) {
            arrow(WIDTH - SIDE, SIDE);
        }
        if (Math.abs(change) <= scale.to()) {
            shapes.add(new Shape.Disc(new Point(scale.at(change), MIDDLE), 4.5, Role.B));
        }
        return new Drawing(WIDTH, HEIGHT, "Change B − A with its interval", description, shapes);
    }

    private void upright(double x, Role role, double width, Shape.Dash dash) {
        shapes.add(new Shape.Line(new Point(x, 4), new Point(x, HEIGHT - 4), role, width, dash));
    }

    /** It goes on beyond what is shown. */
    private void arrow(double x, double length) {
        shapes.add(new Shape.Polygon(List.of(new Point(x, MIDDLE - 5), new Point(x + length, MIDDLE), new Point(x, MIDDLE + 5)), Role.B));
    }
}

package fairpull.report.chart;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.ChanceAlone;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Chance alone over scatter: how often an unchanged car gives as much, where that passes 5 %, and which scatter is plausible; under it the
 * same as a scale, up to where the figure stands.
 */
public final class ChanceChart {
    private static final double HEIGHT = 268;
    private static final double TOP = 40;
    private static final double FOOT = 168;
    private static final double BAR = 196;
    private static final double LEFT = 48;
    private static final double RIGHT = Drawing.WIDTH - 12;
    private static final double ERROR_RATE = 0.05;
    private static final int MOST_TICKS = 8;
    private static final double PERCENT = 100;

    private final AuditAnswer.OfFigure figure;
    private final double tipping;
    private final Scale across;
    private final Scale up;
    private final List<Shape> shapes = new ArrayList<>();

    private ChanceChart(AuditAnswer.OfFigure figure, double tipping) {
        this.figure = figure;
        this.tipping = tipping;
        this.across = new Scale(0, figure.chance().points().get(figure.chance().points().size() - 1).pullScatter(), LEFT, RIGHT);
        double most = figure.chance().points().stream().mapToDouble(ChanceAlone.At::chance).max().orElse(1);
        this.up = new Scale(0, most > 0.5 ? 1 : most > 0.2 ? 0.5 : 0.2, FOOT, TOP);
    }

    /** {@return the chart of a figure; empty where it has no scatter to tip at} */
    public static Optional<Drawing> draw(AuditAnswer.OfFigure figure) {
        return figure.chance().tippingPull().stream().filter(tipping -> tipping > 0 && !figure.chance().points().isEmpty())
                .mapToObj(tipping -> new ChanceChart(figure, tipping).draw()).findFirst();
    }

    private Drawing draw() {
        plausible();
        grid();
        curve();
        ticks();
        scale();
        String tips = percent(tipping);
        return new Drawing(Drawing.WIDTH, HEIGHT, "Chance alone over pull scatter, " + figure.figure().name(),
                "An unchanged car gives as much in 5" + Numbers.THIN + "% of pairs at a pull scatter of " + tips + "; "
                        + (figure.scatter().pullStated() ? "known is " : "ordinary is ") + percent(figure.scatter().ordinary().pull())
                        + ".", shapes);
    }

    private static String percent(double share) {
        return Numbers.brief(PERCENT * share, "%");
    }

    private void plausible() {
        double least = figure.scatter().least().pull();
        double most = figure.scatter().most().pull();
        double ordinary = figure.scatter().ordinary().pull();
        Bounds range = new Bounds(across.at(least), TOP, across.at(most) - across.at(least), BAR + 8 - TOP);
        shapes.add(new Shape.Area(range, 0, Role.GATE_FILL));
        shapes.add(new Shape.Line(new Point(across.at(ordinary), TOP), new Point(across.at(ordinary), FOOT), Role.GATE, 1,
                Shape.Dash.DOTTED));
        String text = figure.scatter().pullStated() ? "known " + percent(ordinary)
                : "plausible " + percent(least) + " to " + percent(most) + ", ordinary " + percent(ordinary);
        shapes.add(new Shape.Words(new Point(range.middle(), TOP - 8), text, Role.GATE, Shape.Type.SMALL, Shape.Anchor.MIDDLE)
                .within(Drawing.WIDTH));
    }

    private void grid() {
        for (double share : up.multiples(up.step(4))) {
            horizontal(share, Role.LINE, Shape.Dash.SOLID);
            shapes.add(GainPlot.words(LEFT - 6, up.at(share) + 4, Math.round(PERCENT * share) + Numbers.THIN + "%", Role.SOFT,
                    Shape.Anchor.END));
        }
        horizontal(ERROR_RATE, Role.INK, Shape.Dash.BROKEN);
        shapes.add(GainPlot.words(2, 14, LetterWidths.fit("how often an unchanged car gives as much: " + figure.figure().name(),
                Shape.Type.SMALL, Drawing.WIDTH - 4), Role.SOFT, Shape.Anchor.START));
    }

    private void horizontal(double share, Role role, Shape.Dash dash) {
        double y = up.at(share);
        shapes.add(new Shape.Line(new Point(LEFT, y), new Point(RIGHT, y), role, 1, dash));
    }

    private void curve() {
        List<Point> points = new ArrayList<>(List.of(new Point(across.at(0), up.at(0))));
        figure.chance().points().forEach(at -> points.add(new Point(across.at(at.pullScatter()), up.at(at.chance()))));
        shapes.add(new Shape.Path(points, Role.B, 2, Shape.Dash.SOLID));
        double tip = across.at(tipping);
        shapes.add(new Shape.Line(new Point(tip, up.at(ERROR_RATE)), new Point(tip, BAR + 14), Role.INK, 1.4, Shape.Dash.SOLID));
        shapes.add(new Shape.Disc(new Point(tip, up.at(ERROR_RATE)), 4, Role.INK));
    }

    /** Each beneath the plot, or left out where the line of the tipping scatter runs through it. */
    private void ticks() {
        double tip = across.at(tipping);
        Scale ticks = new Scale(0, across.to() * PERCENT, LEFT, RIGHT);
        for (double tick : ticks.multiples(ticks.step(MOST_TICKS))) {
            Shape.Words words = GainPlot.words(ticks.at(tick), FOOT + 16, Numbers.brief(tick, "%"), Role.SOFT, Shape.Anchor.MIDDLE)
                    .within(Drawing.WIDTH);
            if (words.bounds().x() > tip || words.bounds().right() < tip) {
                shapes.add(words);
            }
        }
    }

    private void scale() {
        double tip = across.at(tipping);
        Bounds stands = new Bounds(LEFT, BAR, tip - LEFT, 8);
        Bounds falls = new Bounds(tip, BAR, RIGHT - tip, 8);
        shapes.add(new Shape.Area(stands, 0, Role.INK));
        shapes.add(new Shape.Area(falls, 0, Role.LINE));
        segment(stands, "more than chance", Role.INK);
        segment(falls, "chance alone gives as much", Role.SOFT);
        String tips = "more than 5" + Numbers.THIN + "% of cases above " + percent(tipping);
        shapes.add(new Shape.Words(new Point(tip, BAR + 44), tips, Role.INK, Shape.Type.STRONG, Shape.Anchor.MIDDLE).within(Drawing.WIDTH));
        shapes.add(GainPlot.words(2, HEIGHT - 6, "pull scatter, one standard deviation, of the level →", Role.SOFT, Shape.Anchor.START));
    }

    private void segment(Bounds segment, String text, Role role) {
        if (LetterWidths.of(text, Shape.Type.SMALL) < segment.width() - 4) {
            shapes.add(GainPlot.words(segment.middle(), BAR + 24, text, role, Shape.Anchor.MIDDLE));
        }
    }
}

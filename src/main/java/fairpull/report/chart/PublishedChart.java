package fairpull.report.chart;

import fairpull.domain.audit.AuditAnswer;
import fairpull.domain.audit.GradedClaim.Ends;
import fairpull.domain.audit.Publication;
import fairpull.domain.finding.Interval;
import fairpull.domain.unit.Unit;
import fairpull.report.wording.DifferenceWords;
import fairpull.report.wording.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** A published difference with its interval at ordinary scatter and at the worst, against zero and against what is claimed of it. */
public final class PublishedChart {
    private static final double TOP = 30;
    private static final double ROW = 44;
    /** From the top of a row to its bar: what the bar is of stands between, where no line runs. */
    private static final double BAR = 28;
    /** How far lines run past a bar. */
    private static final double REACH = 10;
    private static final double LINE = 16;
    private static final double GAP = 8;
    private static final double EDGE = 24;

    private final Publication.Figure figure;
    private final List<AuditAnswer.OfClaim> claims;
    private final Unit unit;
    private final Numbers numbers;
    private final List<Row> rows;
    private final Scale scale;
    private final List<Shape> shapes = new ArrayList<>();

    private record Row(String words, Interval interval, boolean isWorst) {
    }

    private PublishedChart(Publication.Figure figure, List<AuditAnswer.OfClaim> claims, Ends ends) {
        this.figure = figure;
        this.claims = claims;
        this.unit = figure.before().unit();
        this.rows = rows(ends, claims.get(0).byValues());
        this.numbers = Numbers.resolving(shown(ends.ordinary().high() - ends.ordinary().low()) / 2, unit.symbol());
        this.scale = scale();
    }

    private static List<Row> rows(Ends ends, boolean byValues) {
        Row ordinary = new Row(byValues ? "by the values published one by one" : "ordinary scatter, what is not disclosed done well",
                ends.ordinary(), false);
        Row worst = new Row("scatter and what is not disclosed at their worst", ends.worst(), true);
        return byValues && ends.ordinary().equals(ends.worst()) ? List.of(ordinary) : List.of(ordinary, worst);
    }

    /** {@return the chart of a figure; empty where nothing is claimed of it, or nothing known of how it scatters} */
    public static Optional<Drawing> draw(AuditAnswer answer, Publication.Figure figure) {
        List<AuditAnswer.OfClaim> claims = answer.claims().stream().filter(claim -> claim.claim().figure().equals(figure.name())).toList();
        return claims.stream().findFirst().flatMap(claim -> claim.graded().ends())
                .map(ends -> new PublishedChart(figure, claims, ends).draw());
    }

    private double shown(double si) {
        return unit.differenceFromSi(si);
    }

    private Scale scale() {
        DoubleStream ends = rows.stream().flatMapToDouble(row -> DoubleStream.of(row.interval().low(), row.interval().high()));
        double[] values = DoubleStream.concat(DoubleStream.concat(ends, claimed()), DoubleStream.of(0, figure.gainSi())).map(this::shown)
                .sorted().toArray();
        double low = values[0];
        double high = values[values.length - 1];
        return new Scale(low, high > low ? high : low + 1, EDGE, Drawing.WIDTH - EDGE);
    }

    private DoubleStream claimed() {
        return claims.stream().mapToDouble(claim -> claim.graded().claimed()).filter(gain -> gain > 0).distinct().sorted();
    }

    private Drawing draw() {
        double foot = TOP + rows.size() * ROW;
        upright(0, Role.INK, Shape.Dash.SOLID, foot);
        claimed().map(this::shown).forEach(gain -> upright(gain, Role.GATE, Shape.Dash.BROKEN, foot));
        upright(shown(figure.gainSi()), Role.B, Shape.Dash.DOTTED, foot);
        shapes.add(new Shape.Words(new Point(scale.at(shown(figure.gainSi())), TOP - 14), title(), Role.B, Shape.Type.STRONG,
                Shape.Anchor.MIDDLE).within(Drawing.WIDTH));
        for (int row = 0; row < rows.size(); row++) {
            bar(rows.get(row), TOP + row * ROW + BAR);
        }
        double end = names(foot);
        words(2, end + 20, "← less than before", Role.SOFT, Shape.Anchor.START);
        words(Drawing.WIDTH - 2, end + 20, "gain →", Role.SOFT, Shape.Anchor.END);
        return new Drawing(Drawing.WIDTH, end + 28, "The published difference of " + figure.name() + " with its "
                + Numbers.level(rows.get(0).interval().level()) + " intervals", description(), shapes);
    }

    private String title() {
        String gain = ", published " + DifferenceWords.gain(figure);
        double room = Drawing.WIDTH - LetterWidths.of(gain, Shape.Type.STRONG);
        return LetterWidths.fit(figure.name(), Shape.Type.STRONG, room) + gain;
    }

    private String description() {
        StringBuilder text = new StringBuilder("Published " + DifferenceWords.gain(figure) + ".");
        rows.forEach(row -> text.append(" With ").append(row.words()).append(": ").append(numbers.signedBare(shown(row.interval().low())))
                .append(" to ").append(numbers.signed(shown(row.interval().high()))).append('.'));
        claimed().map(this::shown).forEach(gain -> text.append(" Claimed ").append(claimText(gain)).append('.'));
        return text.toString();
    }

    /** A line past every bar that leaves out the words between them. */
    private void upright(double value, Role role, Shape.Dash dash, double foot) {
        double x = scale.at(value);
        for (int row = 0; row < rows.size(); row++) {
            double y = TOP + row * ROW + BAR;
            double end = row == rows.size() - 1 ? foot : y + REACH;
            shapes.add(new Shape.Line(new Point(x, y - REACH), new Point(x, end), role, 1.4, dash));
        }
    }

    /** What the bar is of and both its ends stand over it. */
    private void bar(Row row, double y) {
        double from = scale.at(shown(row.interval().low()));
        double to = scale.at(shown(row.interval().high()));
        String ends = numbers.signedBare(shown(row.interval().low())) + " to " + numbers.signed(shown(row.interval().high()));
        words(2, y - 15, row.words() + ": " + ends, Role.INK, Shape.Anchor.START);
        shapes.add(new Shape.Line(new Point(from, y), new Point(to, y), row.isWorst() ? Role.B_FAINT : Role.B, 5, Shape.Dash.SOLID));
        shapes.add(new Shape.Disc(new Point(scale.at(shown(figure.gainSi())), y), 6, Role.B));
    }

    /** Zero and what is claimed, each under its line; where two would run into each other the later one goes a line lower. */
    private double names(double foot) {
        List<Shape.Words> placed = new ArrayList<>();
        place(placed, 0, "0", Role.SOFT, foot);
        claimed().map(this::shown).forEach(gain -> place(placed, gain, "claimed " + claimText(gain), Role.GATE, foot));
        shapes.addAll(placed);
        return placed.stream().mapToDouble(words -> words.at().y()).max().orElse(foot);
    }

    private void place(List<Shape.Words> placed, double value, String text, Role role, double foot) {
        double y = foot + LINE;
        Shape.Words words = named(value, text, role, y);
        while (runsInto(placed, words)) {
            y += LINE;
            words = named(value, text, role, y);
        }
        placed.add(words);
    }

    private Shape.Words named(double value, String text, Role role, double y) {
        return new Shape.Words(new Point(scale.at(value), y), text, role, Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(Drawing.WIDTH);
    }

    private static boolean runsInto(List<Shape.Words> placed, Shape.Words words) {
        Bounds bounds = words.bounds();
        Bounds wide = new Bounds(bounds.x() - GAP, bounds.y(), bounds.width() + 2 * GAP, bounds.height());
        return placed.stream().anyMatch(other -> other.bounds().overlaps(wide));
    }

    private String claimText(double gain) {
        return Numbers.brief(gain, unit.symbol());
    }

    private void words(double x, double y, String text, Role role, Shape.Anchor anchor) {
        shapes.add(new Shape.Words(new Point(x, y), text, role, Shape.Type.SMALL, anchor));
    }
}

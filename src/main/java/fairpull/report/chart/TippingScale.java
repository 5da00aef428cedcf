package fairpull.report.chart;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.ScatterRecord;
import fairpull.report.wording.FindingWords;
import fairpull.report.wording.TippingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How much refitting alone may move the measure before the verdict tips, with the rig's own figure where there is a record. */
public final class TippingScale {
    private static final double HEIGHT = 96;
    private static final double BAR = 34;

    private TippingScale() {
    }

    /** {@return the scale, where there is a tipping scatter} */
    public static Optional<Drawing> draw(Finding finding) {
        return finding.tippingScatter().stream().filter(tipping -> tipping > 0 && Double.isFinite(tipping)).boxed().findFirst()
                .map(tipping -> draw(finding, tipping));
    }

    private static Drawing draw(Finding finding, double tipping) {
        double record = finding.settings().refitRecord().map(ScatterRecord::standardDeviation).orElse(0.0);
        Scale scale = new Scale(0, Math.max(tipping, record) * 1.4, 2, Drawing.WIDTH - 2);
        double tip = scale.at(tipping);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Area(new Bounds(scale.start(), BAR, tip - scale.start(), 8), 0, Role.INK));
        shapes.add(new Shape.Area(new Bounds(tip, BAR, scale.end() - tip, 8), 0, Role.LINE));
        segment(new Bounds(scale.start(), BAR, tip - scale.start(), 8), TippingWords.below(finding), Role.INK).ifPresent(shapes::add);
        segment(new Bounds(tip, BAR, scale.end() - tip, 8), TippingWords.above(finding), Role.SOFT).ifPresent(shapes::add);
        String figure = TippingWords.scatter(tipping, finding.unit());
        shapes.add(new Shape.Words(new Point(tip, BAR + 42), "tips at " + figure, Role.INK, Shape.Type.STRONG, Shape.Anchor.MIDDLE)
                .within(Drawing.WIDTH));
        shapes.add(new Shape.Words(new Point(2, HEIGHT - 4), "refit scatter, one standard deviation →", Role.SOFT, Shape.Type.SMALL,
                Shape.Anchor.START));
        finding.settings().refitRecord().ifPresent(known -> shapes.addAll(recordMark(known, finding.unit(), scale)));
        return new Drawing(Drawing.WIDTH, HEIGHT, "Tipping scatter",
                FindingWords.verdictInShort(finding.verdict()) + "; tips at a refit scatter of " + figure + ".", shapes);
    }

    private static Optional<Shape> segment(Bounds segment, String text, Role role) {
        boolean fits = LetterWidths.of(text, Shape.Type.SMALL) < segment.width() - 4;
        return fits ? Optional.of(new Shape.Words(new Point(segment.middle(), segment.bottom() + 16), text, role, Shape.Type.SMALL,
                Shape.Anchor.MIDDLE)) : Optional.empty();
    }

    private static List<Shape> recordMark(ScatterRecord record, String unit, Scale scale) {
        double x = scale.at(record.standardDeviation());
        Shape words = new Shape.Words(new Point(x, BAR - 18), "this rig " + TippingWords.scatter(record.standardDeviation(), unit),
                Role.INK, Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(Drawing.WIDTH);
        return List.of(new Shape.Polygon(List.of(new Point(x, BAR - 2), new Point(x + 6, BAR - 12), new Point(x - 6, BAR - 12)), Role.INK),
                words);
    }
}

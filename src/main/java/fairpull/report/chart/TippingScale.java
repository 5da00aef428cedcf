package fairpull.report.chart;

import fairpull.domain.finding.Finding;
import fairpull.domain.finding.ScatterRecord;
import fairpull.report.wording.Numbers;
import fairpull.report.wording.TippingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How much refitting alone may move the measure before the verdict tips, with the rig's own figure where there is a record. */
public final class TippingScale {
    private static final double WITH_RECORD = 34;
    private static final double WITHOUT_RECORD = 6;
    private static final double BENEATH = 62;

    private TippingScale() {
    }

    /** {@return the scale, where there is a tipping scatter} */
    public static Optional<Chart> of(Finding finding) {
        return finding.tippingScatter().stream().filter(tipping -> tipping > 0 && Double.isFinite(tipping)).boxed().findFirst()
                .map(tipping -> width -> draw(finding, tipping, width));
    }

    private static Drawing draw(Finding finding, double tipping, double width) {
        double record = finding.settings().refitRecord().map(ScatterRecord::standardDeviation).orElse(0.0);
        Scale scale = new Scale(0, Math.max(tipping, record) * 1.4, 2, width - 2);
        double tip = scale.at(tipping);
        double top = finding.settings().refitRecord().isPresent() ? WITH_RECORD : WITHOUT_RECORD;
        Bounds left = new Bounds(scale.start(), top, tip - scale.start(), 8);
        Bounds right = new Bounds(tip, top, scale.end() - tip, 8);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Area(left, 0, Role.INK));
        shapes.add(new Shape.Area(right, 0, Role.LINE));
        segment(left, TippingWords.below(finding), Role.INK).ifPresent(shapes::add);
        segment(right, TippingWords.above(finding), Role.SOFT).ifPresent(shapes::add);
        String figure = TippingWords.scatter(tipping, finding.unit());
        shapes.add(new Shape.Words(new Point(tip, top + 42), "tips at " + figure, Role.INK, Shape.Type.STRONG, Shape.Anchor.MIDDLE)
                .within(width));
        shapes.add(new Shape.Words(new Point(2, top + BENEATH - 4), "refit scatter, one standard deviation →", Role.SOFT, Shape.Type.SMALL,
                Shape.Anchor.START));
        finding.settings().refitRecord().ifPresent(known -> shapes.addAll(recordMark(known, finding.unit(), scale, width)));
        return new Drawing(width, top + BENEATH, "Tipping scatter",
                finding.verdict().words() + "; tips at a refit scatter of " + figure + ".", shapes);
    }

    private static Optional<Shape> segment(Bounds segment, String text, Role role) {
        boolean fits = LetterWidths.of(text, Shape.Type.SMALL) < segment.width() - 4;
        return fits ? Optional.of(new Shape.Words(new Point(segment.middle(), segment.bottom() + 16), text, role, Shape.Type.SMALL,
                Shape.Anchor.MIDDLE)) : Optional.empty();
    }

    private static List<Shape> recordMark(ScatterRecord record, String unit, Scale scale, double width) {
        double x = scale.at(record.standardDeviation());
        Shape words = new Shape.Words(new Point(x, WITH_RECORD - 18), "this rig " + Numbers.brief(record.standardDeviation(), unit),
                Role.INK, Shape.Type.SMALL, Shape.Anchor.MIDDLE).within(width);
        List<Point> corners = List.of(new Point(x, WITH_RECORD - 2), new Point(x + 6, WITH_RECORD - 12),
                new Point(x - 6, WITH_RECORD - 12));
        return List.of(new Shape.Polygon(corners, Role.INK), words);
    }
}

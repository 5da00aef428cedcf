package fairpull.app.usecase.tracing;

import fairpull.domain.plan.Part;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.LinePoint;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.tracing.Tracing;
import fairpull.domain.unit.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The points of a curve as people read them: in the units of the chart once the axes are known, in pixels before. */
public final class TraceTable {
    private TraceTable() {
    }

    /**
     * A table of texts.
     *
     * @param heads of its columns, with units
     * @param rows one a point, from left to right
     */
    public record Texts(List<String> heads, List<List<String>> rows) {
    }

    /** {@return the points of a part} */
    public static Texts of(Tracing tracing, Part part) {
        List<TracedPoint> read = TraceChart.points(tracing, part);
        List<List<String>> rows = new ArrayList<>();
        List<LinePoint> points = tracing.line(part).points();
        for (int place = 0; place < points.size(); place++) {
            String source = points.get(place).source().name().toLowerCase(Locale.ROOT);
            if (read.isEmpty()) {
                rows.add(List.of(rounded(points.get(place).at().xPx(), 0.1), "", rounded(points.get(place).at().yPx(), 0.1), "", source));
            } else {
                TracedPoint point = read.get(place);
                rows.add(List.of(rounded(point.x(), point.xError()), error(point.xError()), rounded(point.y(), point.yError()),
                        error(point.yError()), source));
            }
        }
        String x = read.isEmpty() ? "x, px" : "x" + unit(tracing.x());
        String y = read.isEmpty() ? "y, px" : "y" + unit(tracing.y());
        return new Texts(List.of(x, "±", y, "±", "how"), rows);
    }

    private static String unit(AxisDraft axis) {
        return axis.unit().equals(Units.ONE) ? "" : ", " + axis.unit().symbol();
    }

    /** To the place of the second digit of its error: further digits are not in the picture. */
    private static String rounded(double value, double error) {
        int decimals = error > 0 ? (int) Math.ceil(1 - Math.log10(error)) : 3;
        return plain(new BigDecimal(value).setScale(Math.max(-12, Math.min(12, decimals)), RoundingMode.HALF_EVEN));
    }

    private static String error(double error) {
        return rounded(error, error);
    }

    private static String plain(BigDecimal number) {
        return (number.scale() < 0 ? number.setScale(0) : number).toPlainString();
    }
}

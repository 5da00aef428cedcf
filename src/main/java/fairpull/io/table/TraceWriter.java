package fairpull.io.table;

import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import fairpull.domain.tracing.TracedPoint;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.List;
import java.util.Locale;

/** Writes traced curves as a table with one row a point: value and reading error of both axes, and where it lies in the picture. */
public final class TraceWriter {
    private TraceWriter() {
    }

    /** {@return the table as comma-separated text} */
    public static String text(Trace trace) {
        String x = unit(trace.axes().x().unit());
        String y = unit(trace.axes().y().unit());
        CsvText text = new CsvText().heads(List.of("curve", "x" + x, "standard error of x" + x, "y" + y, "standard error of y" + y,
                "pixels from the left", "pixels from the top", "source"));
        for (TracedCurve curve : trace.curves()) {
            for (TracedPoint point : curve.points()) {
                text.line().text(curve.part().name()).number(point.x()).number(point.xError()).number(point.y()).number(point.yError())
                        .number(point.at().xPx()).number(point.at().yPx()).text(point.source().name().toLowerCase(Locale.ROOT));
            }
        }
        return text.text();
    }

    private static String unit(Unit unit) {
        return unit.equals(Units.ONE) ? "" : " (" + unit.symbol() + ")";
    }
}

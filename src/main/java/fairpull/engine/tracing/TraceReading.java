package fairpull.engine.tracing;

import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Trace;
import fairpull.domain.tracing.TracedCurve;
import fairpull.domain.tracing.TracedLine;
import fairpull.domain.tracing.Tracing;
import java.util.ArrayList;
import java.util.List;

/** What was traced, in the units of the chart. */
public final class TraceReading {
    private TraceReading() {
    }

    /**
     * Reads every curve that has points.
     *
     * @param axes of the chart
     * @throws IllegalArgumentException if the axes stand askew, or no curve has points
     */
    public static Trace of(Tracing tracing, Axes axes) {
        Calibration calibration = Calibration.of(axes);
        List<TracedCurve> curves = new ArrayList<>();
        for (Part part : Part.values()) {
            TracedLine line = tracing.line(part);
            if (!line.points().isEmpty()) {
                curves.add(new TracedCurve(part, String.format("#%06x", line.colour().orElse(0)), line.widthPx(), line.points().stream()
                        .map(point -> calibration.read(point, line.widthPx())).toList(), line.gaps()));
            }
        }
        return new Trace(tracing.file(), axes, curves);
    }
}

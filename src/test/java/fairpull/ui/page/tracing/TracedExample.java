package fairpull.ui.page.tracing;

import fairpull.app.document.Settings;
import fairpull.domain.plan.Part;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.AxisDraft;
import fairpull.domain.tracing.PixelPoint;
import fairpull.engine.tracing.DrawnChart;
import fairpull.ui.OffScreen;
import fairpull.ui.Waiting;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The pane with an invented chart, of which both curves are followed. */
public final class TracedExample {
    static final Color RED = new Color(200, 30, 40);
    static final Color BLUE = new Color(30, 90, 180);

    private TracedExample() {
    }

    static double changed(double rpm) {
        return DrawnChart.power(rpm) * 1.18 - 18;
    }

    /** {@return the invented chart} */
    static DrawnChart chart() {
        return new DrawnChart(900, 560, true, Color.WHITE).grid(new Color(205, 205, 205)).curve(DrawnChart::power, RED, 2.5)
                .curve(TracedExample::changed, BLUE, 2.5).legend(RED, BLUE, 2.5);
    }

    /** {@return the pane, its picture kept in a folder} */
    public static TracingPane pane(Path folder) throws IOException {
        TracingPane[] made = new TracingPane[1];
        Waiting.onWindowThread(() -> {
            made[0] = new TracingPane(Settings.in(folder.resolve("none")));
            OffScreen.laidOut(made[0], 1280, 800);
        });
        trace(made[0], folder);
        return made[0];
    }

    /** Traces the invented chart in a pane, its picture kept in a folder. */
    public static void trace(TracingPane pane, Path folder) throws IOException {
        DrawnChart chart = chart();
        Path file = Files.write(folder.resolve("invented-chart.png"), chart.png());
        Waiting.onWindowThread(() -> pane.open(file));
        Waiting.forQuiet();
        Bench bench = pane.bench();
        Waiting.onWindowThread(() -> {
            Axes axes = chart.axes();
            bench.axis(true, "x", "", axis -> draft(axes.x()));
            bench.axis(false, "y", "", axis -> draft(axes.y()));
            bench.take(Tool.FOLLOW_B);
            bench.click(chart.on(TracedExample::changed, 5600));
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> {
            bench.turnTo(Part.A);
            bench.click(chart.on(DrawnChart::power, 5600));
        });
        Waiting.forQuiet();
        Waiting.onWindowThread(() -> bench.choose(OptionalInt.of(40)));
    }

    /** {@return the invented chart as a picture in a folder} */
    public static Path picture(Path folder) throws IOException {
        return Files.write(folder.resolve("invented-chart.png"), chart().png());
    }

    /** {@return a chart as large as a photograph} */
    public static Path large(Path folder) throws IOException {
        DrawnChart chart = new DrawnChart(4000, 3000, true, Color.WHITE).curve(DrawnChart::power, RED, 9);
        return Files.write(folder.resolve("large-chart.png"), chart.png());
    }

    /** {@return where in the picture as it is shown a mark of an axis is, such as x at 2000} */
    public static Point2D mark(TracingPane pane, boolean across, double value) {
        DrawnChart chart = chart();
        return shown(pane, across ? new PixelPoint(chart.xPx(value), chart.yPx(0)) : new PixelPoint(chart.xPx(1000), chart.yPx(value)));
    }

    /** {@return where in the picture as it is shown the line of a part runs at 5600 rpm} */
    public static Point2D line(TracingPane pane, Part part) {
        return shown(pane, chart().on(part == Part.A ? DrawnChart::power : TracedExample::changed, 5600));
    }

    private static Point2D shown(TracingPane pane, PixelPoint place) {
        return new Point2D.Double(pane.view().x(place), pane.view().y(place));
    }

    static AxisDraft draft(Axis axis) {
        return new AxisDraft(Optional.of(axis.first().at()), OptionalDouble.of(axis.first().value()), Optional.of(axis.second().at()),
                OptionalDouble.of(axis.second().value()), axis.scale(), axis.unit());
    }
}

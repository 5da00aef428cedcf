package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.List;

/** The frame of a plot over minutes: light horizontal lines, figures on both axes, their units. */
final class TimePlot {
    private static final int MOST_TICKS = 10;

    private final Bounds panel;
    private final Scale across;
    private final Scale up;

    /**
     * Makes the frame.
     *
     * @param panel where it stands
     * @param minutes the last minute shown
     * @param low the lowest value
     * @param high the highest, above {@code low}
     */
    TimePlot(Bounds panel, double minutes, double low, double high) {
        this.panel = panel;
        this.across = new Scale(0, minutes, panel.x(), panel.right());
        this.up = new Scale(low, high, panel.bottom(), panel.y());
    }

    Point at(double minutes, double value) {
        return new Point(across.at(minutes), up.at(value));
    }

    List<Shape> frame(String label) {
        return Axes.up(panel, up, label);
    }

    List<Shape> minutes() {
        return Axes.along(panel, across, MOST_TICKS, value -> value == 0 ? Numbers.THIN + "min" : "");
    }
}

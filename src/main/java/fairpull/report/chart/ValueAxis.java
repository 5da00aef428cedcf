package fairpull.report.chart;

import fairpull.report.wording.Numbers;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How the values of a measure are shown beneath the days. Every day gets the same span, so that slopes compare between days.
 *
 * @param label the measure and its unit
 * @param span from the lowest to the highest value of the day where that is largest; 0 without values
 * @param numbers how values are printed
 */
public record ValueAxis(String label, double span, Numbers numbers) {
    /** {@return an axis for a measure over all days} */
    public static ValueAxis of(String measure, List<Day> days, Numbers numbers, String unit) {
        double span = 0;
        for (Day day : days) {
            DoubleStream.Builder builder = DoubleStream.builder();
            values(day).forEach(builder::add);
            double[] sorted = builder.build().sorted().toArray();
            if (sorted.length > 0) {
                double range = sorted[sorted.length - 1] - sorted[0];
                span = Math.max(span, range > 0 ? range : Math.max(Math.abs(sorted[0]) * 0.01, Double.MIN_NORMAL));
            }
        }
        return new ValueAxis(unit.isBlank() ? measure : measure + ", " + unit, span, numbers);
    }

    static DoubleStream values(Day day) {
        return day.blocks().stream().flatMap(block -> block.marks().stream()).flatMapToDouble(mark -> mark.value().stream());
    }
}

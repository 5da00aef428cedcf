package fairpull.report.chart;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.plan.Part;
import fairpull.domain.pull.Samples;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The curves of one install and their mean.
 *
 * @param label which install
 * @param part what was fitted
 * @param pulls their curves on the grid of the table
 * @param mean at each speed, of the pulls that cover it; NaN where none does
 */
record InstallCurve(String label, Part part, List<Samples> pulls, Samples mean) {
    /** {@return the installs of a table, in the order in which they were run} */
    static List<InstallCurve> of(CurveTable table) {
        Map<String, List<CurveRow>> byInstall = new LinkedHashMap<>();
        table.rows().forEach(row -> byInstall.computeIfAbsent(row.install(), label -> new ArrayList<>()).add(row));
        return byInstall.values().stream().map(rows -> {
            List<Samples> pulls = rows.stream().map(CurveRow::values).toList();
            return new InstallCurve(rows.get(0).install(), rows.get(0).part(), pulls, mean(pulls, table.grid().size()));
        }).toList();
    }

    /** {@return the mean of several curves at each of so many speeds} */
    static Samples mean(List<Samples> curves, int size) {
        return Samples.of(IntStream.range(0, size)
                .mapToDouble(place -> curves.stream().mapToDouble(curve -> curve.at(place)).filter(Double::isFinite).average()
                        .orElse(Double.NaN))
                .toArray());
    }
}

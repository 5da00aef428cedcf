package fairpull.report.wording;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.plan.Part;
import java.util.List;
import java.util.stream.IntStream;

/** At which engine speed the curves have their largest value, and whether that is a peak or only the end of the speeds compared. */
final class PeakWords {
    private final CurveTable table;
    private final int[] common;

    private PeakWords(CurveTable table) {
        this.table = table;
        this.common = CoverageWords.common(table);
    }

    /** {@return one or two sentences; empty where no speed is covered by all pulls} */
    static String where(CurveTable table) {
        PeakWords peaks = new PeakWords(table);
        return peaks.common.length == 0 ? "" : peaks.sentences();
    }

    private String sentences() {
        List<CurveRow> rows = table.rows();
        long atEnd = rows.stream().filter(this::isAtEnd).count();
        String speeds = "Over the speeds that all pulls cover the largest value stands at "
                + CurveNumbers.rpm(mean(Part.A)) + " with A and at "
                + CurveNumbers.rpm(mean(Part.B)) + " with B, on average.";
        return atEnd == 0 ? speeds : speeds + " In " + atEnd + " of " + Numbers.count(rows.size(), "pull")
                + " that is an end of those speeds, so the curve may go on to rise beyond it.";
    }

    private boolean isAtEnd(CurveRow row) {
        int place = place(row);
        return place == common[0] || place == common[common.length - 1];
    }

    private int place(CurveRow row) {
        return IntStream.of(common).reduce((best, place) -> row.values().at(place) > row.values().at(best) ? place : best).orElseThrow();
    }

    private double mean(Part part) {
        return table.rows().stream().filter(row -> row.part() == part).mapToDouble(row -> table.grid().at(place(row))).average()
                .orElse(Double.NaN);
    }
}

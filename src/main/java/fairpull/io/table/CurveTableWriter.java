package fairpull.io.table;

import fairpull.domain.curve.CurveRow;
import fairpull.domain.curve.CurveTable;
import fairpull.domain.curve.SpeedGrid;
import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.CurvePoint;
import fairpull.domain.unit.PlainNumber;
import fairpull.domain.unit.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes curves as tables with one row a speed: every pull side by side, and the change with its band. */
public final class CurveTableWriter {
    /** rpm and rad/s differ by π/30, so that a round speed comes back within a few units of the last binary place. */
    private static final int ULPS = 4;
    private static final int MOST_DIGITS = 17;
    private static final String SPEED = "engine speed (rpm)";

    /** Stands in the headings of curves that were smoothed, so that they are not taken for exports and smoothed again. */
    private static final String ON_GRID = " on the grid";

    private CurveTableWriter() {
    }

    /** {@return every pull on the grid: engine speed, then one column a pull; blank where it does not cover the speed} */
    public static String wide(CurveTable table) {
        String inUnit = " " + table.unit().quantity().words() + ON_GRID + unit(table);
        List<String> heads = new ArrayList<>(List.of(SPEED));
        table.rows().forEach(row -> heads.add(row.name() + inUnit));
        CsvText text = new CsvText().heads(heads);
        SpeedGrid grid = table.grid();
        for (int place = 0; place < grid.size(); place++) {
            CsvText.Line line = text.line().text(rpm(grid.at(place)));
            for (CurveRow row : table.rows()) {
                line.number(row.values().at(place));
            }
        }
        return text.text();
    }

    /** {@return every pull on the grid, one row a speed of a pull, as {@link PointTableReader} reads it: judged again, it says the same} */
    public static String points(CurveTable table) {
        List<String> heads = new ArrayList<>(List.of("install", "part", "pull", "session"));
        boolean timed = table.rows().stream().anyMatch(row -> Double.isFinite(row.minutes()));
        if (timed) {
            heads.add("minutes");
        }
        heads.addAll(List.of("speed (rpm)", "value" + unit(table), "bandwidth (rpm)"));
        heads.addAll(table.covariateNames());
        CsvText text = new CsvText().heads(heads);
        for (CurveRow row : table.rows()) {
            for (int place = 0; place < table.grid().size(); place++) {
                if (Double.isFinite(row.values().at(place))) {
                    CsvText.Line line = text.line().text(row.install()).text(row.part().name()).text(row.pull()).text(row.session());
                    if (timed) {
                        line.number(row.minutes());
                    }
                    line.text(rpm(table.grid().at(place))).number(row.values().at(place)).text(rpm(table.bandwidthRadPerS()));
                    row.covariates().forEach(line::number);
                }
            }
        }
        return text.text();
    }

    /** {@return whether a heading is one of {@link #wide}, whose values must not be smoothed again} */
    public static boolean isOnGrid(String heading) {
        return heading.toLowerCase(Locale.ROOT).contains(ON_GRID);
    }

    /** {@return the change at every speed that was judged; an end of an interval that is open is blank} */
    public static String difference(CurveFinding curve) {
        String unit = unit(curve.curves());
        CsvText text = new CsvText().heads(List.of(SPEED, "mean of A" + unit, "mean of B" + unit, "change" + unit, "standard error" + unit,
                "degrees of freedom", "t", "p", "interval low" + unit, "interval high" + unit, "band low" + unit, "band high" + unit));
        for (CurvePoint point : curve.points()) {
            text.line().text(rpm(point.speedRadPerS())).number(point.meanA()).number(point.meanB()).number(point.estimate().change())
                    .number(point.estimate().standardError()).number(point.estimate().degreesOfFreedom()).number(point.estimate().t())
                    .number(point.estimate().pValue()).number(point.own().low()).number(point.own().high()).number(point.band().low())
                    .number(point.band().high());
        }
        return text.text();
    }

    private static String unit(CurveTable table) {
        return " (" + table.unit().symbol() + ")";
    }

    /** {@return the shortest decimal in rpm that stands for a speed} */
    static String rpm(double radPerS) {
        double rpm = Units.RPM.fromSi(radPerS);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = new BigDecimal(rpm).round(new MathContext(digits));
            if (Math.abs(Units.RPM.toSi(rounded.doubleValue()) - radPerS) <= ULPS * Math.ulp(radPerS)) {
                return PlainNumber.shortest(rounded.doubleValue()).toPlainString();
            }
        }
        return PlainNumber.shortest(rpm).toPlainString();
    }
}

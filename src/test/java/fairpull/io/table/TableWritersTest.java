package fairpull.io.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.finding.CurveFinding;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.domain.unit.Units;
import fairpull.report.CurveExamples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written is read back by the reader that strangers' tables go through, number for number. */
class TableWritersTest {
    @TempDir
    private Path folder;

    @Test
    void aTableOfPullsReadsBackExactly() throws IOException {
        SplittableRandom random = new SplittableRandom(20260509);
        List<PullRow> rows = new ArrayList<>();
        for (int row = 0; row < 500; row++) {
            String install = (row % 2 == 0 ? "A" : "B") + (row / 10 + 1);
            rows.add(new PullRow("a day, of \"many\"", install, Part.valueOf(install.substring(0, 1)), install + "-" + row, row * 5.1 / 3,
                    200 * random.nextDouble() + 1e-3, List.of(300 * random.nextDouble() + 1)));
        }
        PullTable table = new PullTable("hp", List.of("intake-air"), rows);
        Path file = Files.writeString(folder.resolve("pulls.csv"), PullTableWriter.text(table));

        PullTable back = PullTableReader.read(file, new TableOptions(List.of("intake-air"), Drift.LINEAR, "hp", Optional.empty()));

        assertThat(back).isEqualTo(table);
    }

    @Test
    void timesThatAreNotKnownAreLeftOut() {
        PullTable table = new PullTable("hp", List.of(), List.of(row("A1", Double.NaN), row("B1", Double.NaN)));

        assertThat(PullTableWriter.text(table)).isEqualTo("install,part,pull,session,value\nA1,A,A1-1,1,12.5\nB1,B,B1-1,1,12.5\n");
    }

    @Test
    void whatASpreadsheetWouldTakeForAFormulaIsText() {
        for (String hostile : List.of("=1+1", "+1", "-1", "@x", "\tx", "\rx")) {
            CsvText text = new CsvText();
            text.line().text(hostile).number(-1.5);

            assertThat(text.text()).matches("(?s)\"?'\\Q" + hostile + "\\E\"?,-1\\.5\n");
        }
    }

    @Test
    void curvesStandSideBySideWithTheirUnits() {
        CurveFinding curve = CurveExamples.gain();
        List<String> lines = CurveTableWriter.wide(curve.curves()).lines().toList();

        assertThat(lines.get(0)).startsWith("engine speed (rpm),A1-1 power on the grid (hp),A1-2 power on the grid (hp)").endsWith("A3-5 power on the grid (hp)");
        assertThat(lines).hasSize(174);
        assertThat(lines.get(1)).startsWith("2500,").contains(",,");
        assertThat(lines.get(173)).startsWith("6800,");
        String[] cells = lines.get(100).split(",", -1);
        assertThat(cells).hasSize(26);
        for (int pull = 0; pull < 25; pull++) {
            assertThat(Double.parseDouble(cells[pull + 1])).isEqualTo(curve.curves().rows().get(pull).values().at(99));
        }
    }

    @Test
    void theDifferenceHasItsBand() {
        CurveFinding curve = CurveExamples.gain();
        List<String> lines = CurveTableWriter.difference(curve).lines().toList();

        assertThat(lines.get(0)).isEqualTo("engine speed (rpm),mean of A (hp),mean of B (hp),change (hp),standard error (hp),"
                + "degrees of freedom,t,p,interval low (hp),interval high (hp),band low (hp),band high (hp)");
        String[] cells = lines.get(41).split(",", -1);
        assertThat(cells[0]).isEqualTo("3500");
        assertThat(Double.parseDouble(cells[3])).isEqualTo(curve.points().get(40).estimate().change());
        assertThat(Double.parseDouble(cells[11])).isEqualTo(curve.points().get(40).band().high());
    }

    @Test
    void roundSpeedsStayRound() {
        for (int rpm = 100; rpm <= 20_000; rpm += 25) {
            assertThat(CurveTableWriter.rpm(Units.RPM.toSi(rpm))).isEqualTo(Integer.toString(rpm));
        }
        double back = Units.RPM.toSi(Double.parseDouble(CurveTableWriter.rpm(333.3333)));
        assertThat(back).isCloseTo(333.3333, within(4 * Math.ulp(333.3333)));
    }

    private static PullRow row(String install, double minutes) {
        return new PullRow("1", install, Part.valueOf(install.substring(0, 1)), install + "-1", minutes, 12.5, List.of());
    }
}

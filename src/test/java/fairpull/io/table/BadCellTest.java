package fairpull.io.table;

import fairpull.domain.Remedy.Surface;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fairpull.domain.InputException;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** However short an export is and wherever its bad cell stands, that cell is named, not the header blamed. */
class BadCellTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1O5|,", "fault|,", "1O5|;", "off|;", "1e999|,", "fault|tab", "12:30|,"})
    void oneBadCellIsNamed(String bad, String typedDelimiter) throws IOException {
        String delimiter = typedDelimiter.equals("tab") ? "\t" : typedDelimiter;
        for (int rows : List.of(2, 3, 4, 5, 20, 45)) {
            for (int at = 0; at < rows; at++) {
                List<String> lines = sound(rows, delimiter);
                lines.set(1 + at, (3000 + 100 * at) + delimiter + bad);

                assertThat(refusal(lines)).as("%s", lines).contains("line " + (2 + at) + ", column power (kW): “" + bad + "” is not a number");
            }
        }
    }

    /** A logger writes such a word for "no value at this moment"; the file is sound, and the row says nothing of that channel. */
    @ParameterizedTest
    @ValueSource(strings = {"NaN", "nan", "#N/A", "N/A", "n/a", "-", "--", "---", "\u2013", "null", "NULL", "inf", "-Inf", "Infinity", "#DIV/0!"})
    void aWordForNoValueCountsAsBlankAndIsCounted(String none) throws IOException {
        for (int rows : List.of(3, 5, 20, 45)) {
            for (int at = 0; at < rows; at++) {
                List<String> lines = sound(rows, ",");
                lines.set(1 + at, (3000 + 100 * at) + "," + none);
                Path file = Files.writeString(folder.resolve("table.csv"), String.join("\n", lines) + "\n");

                Preview preview = preview(ExportFile.look(file, Optional.empty()));
                assertThat(preview.doubts()).as("%s", lines)
                        .containsExactly("1 cell of column “power (kW)” says there is no value, and counts as blank");
                Export export = ExportReader.read(file);
                Mapping mapping = ColumnGuess.mapping(export, Map.of(), Optional.empty());
                assertThat(MappedExport.read(export, mapping).droppedRows()).isEqualTo(1);
                assertThat(MissingValues.rowsLeftOut(export, mapping))
                        .contains("1 of " + rows + " rows is left out: no value of “power (kW)” stands in it");
            }
        }
    }

    @Test
    void aWordForNoValueInLongFormLeavesAGapThatNothingIsInterpolatedAcross() throws IOException {
        List<String> lines = new ArrayList<>(List.of("time (s),channel,value,unit"));
        for (int row = 0; row < 10; row++) {
            lines.add(row + ",rpm," + (3000 + 100 * row) + ",rpm");
            lines.add(row + ",power," + (row == 4 || row == 5 ? "NaN" : 100 + row) + ",kW");
        }
        Export export = export(lines);

        assertThat(ExportShapesTest.channels(export).find(Quantity.ENGINE_SPEED).orElseThrow().stream().map(Units.RPM::fromSi).mapToLong(Math::round)
                .toArray()).containsExactly(3000, 3100, 3200, 3300, 3600, 3700, 3800, 3900);
        assertThat(export.columns()).extracting(ExportColumn::noValues).containsExactly(0, 0, 2);
    }

    @Test
    void columnsThatAreReadStandBeforeThoseThatAreNot() throws IOException {
        List<String> lines = new ArrayList<>(List.of("rpm,x1,x2,x3,x4,x5,x6,x7,power (kW)"));
        for (int row = 0; row < 10; row++) {
            lines.add((3000 + 100 * row) + ",--,--,--,--,--,--,--," + (row < 2 ? "--" : 100 + row));
        }
        Path file = Files.writeString(folder.resolve("wide.csv"), String.join("\n", lines) + "\n");

        assertThat(preview(ExportFile.look(file, Optional.empty())).doubts()).startsWith(
                "2 cells of column “power (kW)” say there is no value, and count as blank",
                "10 cells of column “x1” say there is no value, and count as blank")
                .endsWith("20 cells of 2 other columns say so too");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 45})
    void badCellsSideBySideAreNamed(int rows) throws IOException {
        for (int at = 0; at < rows; at++) {
            List<String> lines = new ArrayList<>(List.of("rpm,power (kW),torque (Nm)"));
            for (int row = 0; row < rows; row++) {
                lines.add(row == at ? "3000,none,none" : 3000 + 100 * row + "," + (100 + row) + ",250.5");
            }
            assertThat(refusal(lines)).as("%s", lines).contains("line " + (2 + at) + ", column power (kW): “none” is not a number");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void aLineOfTooManyCellsIsNamed(String delimiter) throws IOException {
        for (int rows : List.of(1, 2, 3, 4, 5, 20, 45)) {
            for (int at = 0; at < rows; at++) {
                List<String> lines = sound(rows, delimiter);
                lines.set(1 + at, lines.get(1 + at) + delimiter + "5");

                assertThat(refusal(lines)).as("%s", lines)
                        .contains("line " + (2 + at) + ": the line has 3 cells and the header names 2 columns");
            }
        }
    }

    @Test
    void aLineOfTooFewCellsIsDroppedAndCounted() throws IOException {
        for (int at = 0; at < 3; at++) {
            List<String> lines = sound(3, ",");
            lines.set(1 + at, "3500");
            Export export = export(lines);

            assertThat(MappedExport.read(export, ColumnGuess.mapping(export, Map.of(), Optional.empty())).droppedRows()).isEqualTo(1);
        }
    }

    @Test
    void mostOfAColumnMayBeBad() throws IOException {
        assertThat(refusal(List.of("rpm,power (kW)", "3000,a", "3500,b", "4000,105"))).contains("line 2, column power (kW): “a”");
        assertThat(refusal(List.of("rpm,power (kW)", "3000,100", "3500,b", "4000,c"))).contains("line 3, column power (kW): “b”");
    }

    @Test
    void aPreambleIsStillNoHeader() throws IOException {
        Export export = export(List.of("Run,Driver", "12,Ann", "Weather: dry", "rpm,power (kW)", "3000,100", "4000,105"));

        assertThat(export.dialect().headerLine()).isEqualTo(4);
        assertThat(ExportShapesTest.channels(export).rows()).isEqualTo(2);
    }

    private static List<String> sound(int rows, String delimiter) {
        List<String> lines = new ArrayList<>(List.of("rpm" + delimiter + "power (kW)"));
        for (int row = 0; row < rows; row++) {
            lines.add(3000 + 100 * row + delimiter + (100 + row));
        }
        return lines;
    }

    private String refusal(List<String> lines) throws IOException {
        InputException refusal = catchThrowableOfType(InputException.class, () -> ExportShapesTest.channels(export(lines)));
        assertThat(refusal).as("%s", lines).isNotNull();
        return refusal.oneLine();
    }

    private Export export(List<String> lines) throws IOException {
        return ExportReader.read(Files.writeString(folder.resolve("table.csv"), String.join("\n", lines) + "\n"));
    }

    private static Preview preview(ExportFile file) {
        return Preview.of(file, file, Map.of(), Surface.COMMAND_LINE);
    }
}

package fairpull.io.table;

import static fairpull.io.table.ExportShapesTest.assertNumbers;
import static fairpull.io.table.ExportShapesTest.resource;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fairpull.domain.InputException;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.Mapping;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that hold several pulls: how these are found, and that one mapping reads all of them. */
class SeveralPullsTest {
    @TempDir
    private Path folder;

    @Test
    void sideBySideNamedInEachHeading() {
        ExportFile file = file("side-by-side/pulls.csv");

        assertThat(file.labels()).containsExactly("pull 1", "pull 2");
        assertThat(file.howFound()).isEqualTo("the headings name pull 1, pull 2");
        assertNumbers(pull(file, 1), Quantity.POWER, Units.KILOWATT, 40.5, 50.5, 60.5);
        assertNumbers(pull(file, 2), Quantity.ENGINE_SPEED, Units.RPM, 2000, 2500);
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 41, 51.25);
        assertNumbers(pull(file, 2), Quantity.TORQUE, Units.NEWTON_METRE, 195.75, 195.75);
    }

    @Test
    void sideBySideNamedInARowAbove() {
        ExportFile file = file("side-by-side/groups.csv");

        assertThat(file.labels()).containsExactly("lauf 1", "lauf 2");
        assertNumbers(pull(file, 1), Quantity.TORQUE, Units.NEWTON_METRE, 193.4, 192.9, 192.6);
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 41, 51.25, 61.5);
    }

    @Test
    void sideBySideByTheSameHeadingsAgain() {
        ExportFile file = file("side-by-side/repeated.csv");

        assertThat(file.labels()).containsExactly("1", "2");
        assertThat(file.howFound()).isEqualTo("the same headings stand 2 times side by side");
        assertNumbers(pull(file, 1), Quantity.TIME, Units.SECOND, 0, 1, 2);
        assertNumbers(pull(file, 2), Quantity.TIME, Units.SECOND, 0, 1.5);
        assertNumbers(pull(file, 2), Quantity.ENGINE_SPEED, Units.RPM, 2010, 2600);
    }

    @Test
    void sideBySideByTheNamesOfAPlan() {
        ExportFile file = file("side-by-side/curves.csv");

        assertThat(file.named()).containsExactly(new PullId("A1", false, 1), new PullId("A1", false, 2), new PullId("B1", false, 1));
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 41, 61, 81);
        assertNumbers(pull(file, 3), Quantity.ENGINE_SPEED, Units.RPM, 2000, 3000);
        assertNumbers(pull(file, 3), Quantity.POWER, Units.KILOWATT, 43.25, 63.25);
    }

    @Test
    void theHeaderAgain() {
        ExportFile file = file("stacked/header-again.csv");

        assertThat(file.howFound()).isEqualTo("the header stands again at line 9");
        assertThat(file.pulls()).isEqualTo(2);
        assertNumbers(pull(file, 1), Quantity.POWER, Units.KILOWATT, 50.5, 60.5, 70.5);
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 51.5, 61.5, 71.5, 81.5);
    }

    @Test
    void blankLinesPerhapsWithTitles() {
        ExportFile file = file("stacked/blank-lines.csv");

        assertThat(file.howFound()).isEqualTo("blank lines stand between them at lines 6, 11");
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 51.5, 61.5, 71.5);
        assertNumbers(pull(file, 3), Quantity.POWER, Units.KILOWATT, 52.5, 62.5, 72.5);
        assertThat(file.table().doubts()).contains("lines of text behind blank lines are taken as titles and not read");
    }

    @Test
    void aColumnOfPulls() {
        ExportFile file = file("stacked/numbered.csv");

        assertThat(file.named()).containsExactly(new PullId("A1", false, 1), new PullId("B1", false, 2));
        assertNumbers(pull(file, 1), Quantity.POWER, Units.KILOWATT, 50.5, 60.5);
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 51.5, 61.5, 71.5);
    }

    @Test
    void theTimeStartingAgain() {
        ExportFile file = file("stacked/time-again.csv");

        assertThat(file.howFound()).isEqualTo("the time starts again at line 6");
        assertNumbers(pull(file, 1), Quantity.TIME, Units.SECOND, 0, 1, 2, 3);
        assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 51.5, 61.5, 71.5);
    }

    @Test
    void aTimeThatGoesBackALittleIsOnePullAndADoubt() throws IOException {
        ExportFile file = look("Time (s),rpm,power (kW)\n0,2000,50.5\n1,2500,55.5\n1,3000,60.5\n0.9,3500,65.5\n2,4000,70.5\n");

        assertThat(file.pulls()).isEqualTo(1);
        assertThat(file.table().doubts()).containsExactly("the time does not rise in 2 rows, first in line 4");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "Time (s),rpm,power (kW)\n0,2000,50.5\n1,2500,55.5\n2,3000,60.5\n\n3,3500,65.5\n4,4000,70.5\n5,4500,72.5\n",
        "Time (s),rpm,power (kW)\n\n0,2000,50.5\n\n1,2500,55.5\n\n2,3000,60.5\n\n3,3500,65.5\n\n4,4000,70.5\n"})
    void blankLinesInsideOnePullArePassedOver(String text) throws IOException {
        ExportFile file = look(text);

        assertThat(file.pulls()).isEqualTo(1);
        assertThat(file.table().doubts()).containsExactly("blank lines in the table are passed over");
        assertThat(pull(file, 1).rows()).isGreaterThanOrEqualTo(5);
    }

    @Test
    void longFormWithAColumnOfPullsOrTimesStartingAgain() throws IOException {
        String byNumber = "run;s;channel;value\n1;0;rpm;2000\n1;0;power (kW);50,5\n1;1;rpm;3000\n1;1;power (kW);60,5\n"
                + "2;0;rpm;2000\n2;0;power (kW);51,5\n2;1;rpm;3000\n2;1;power (kW);61,5\n";
        String byTime = "s;channel;value\n0;rpm;2000\n1;rpm;3000\n0;rpm;2000\n1;rpm;3000\n"
                + "0;power (kW);50,5\n1;power (kW);60,5\n0;power (kW);51,5\n1;power (kW);61,5\n";
        for (String text : List.of(byNumber, byTime)) {
            ExportFile file = look(text);
            assertThat(file.pulls()).as(text).isEqualTo(2);
            assertNumbers(pull(file, 1), Quantity.POWER, Units.KILOWATT, 50.5, 60.5);
            assertNumbers(pull(file, 2), Quantity.POWER, Units.KILOWATT, 51.5, 61.5);
        }
    }

    @Test
    void whatCannotBeToldApartIsRefused() throws IOException {
        assertThat(refusal("run,rpm,power (kW)\n1,2000,50.5\n1,3000,60.5\n2,2000,50.5\n2,3000,60.5\n1,2000,50.5\n1,3000,60.5\n"))
                .contains("line 6, column run: pull 1 comes back after another one");
        assertThat(ExportFile.look(folder.resolve("file.csv"), Optional.empty()).table().rows()).as("it is one table all the same").isEqualTo(6);
        assertThat(refusal("s;channel;value\n0;rpm;2000\n1;rpm;3000\n0;rpm;2000\n1;rpm;3000\n0;power (kW);50,5\n1;power (kW);60,5\n"))
                .contains("the time starts again 1 times for “rpm” and 0 times for “power (kW)”");
        assertThat(refusal("s;channel;value;unit\n0;rpm;2000;1/min\n1;rpm;3000;rad/s\n")).contains("line 3, column rpm: the unit is “rad/s” here");
        assertThat(refusal("rpm   kW\n" + "2000  50\n".repeat(450) + "3000.5555\n")).contains("line 452: the cells of this line do not stand");
    }

    @Test
    void aPullInAnotherUnitIsNotReadByTheMappingOfTheFirst() throws IOException {
        ExportFile file = look("rpm,run 1 power (kW),run 2 power (hp)\n2000,50.5,67.7\n3000,60.5,81.1\n");

        InputException refusal = catchThrowableOfType(InputException.class, () -> pull(file, 2));
        assertThat(refusal.oneLine()).contains("there is no such column");
    }

    @Test
    void oneMappingReadsEveryPullHoweverTheFileIsReadAgain() {
        for (String name : List.of("side-by-side/pulls.csv", "side-by-side/repeated.csv", "stacked/time-again.csv", "stacked/numbered.csv")) {
            ExportFile look = file(name);
            Mapping mapping = ColumnGuess.mapping(look.sample(), Map.of(), Optional.empty());
            ExportFile again = ExportFile.read(resource(name), mapping);
            for (int pull = 1; pull <= look.pulls(); pull++) {
                assertThat(MappedExport.channels(again.pull(pull), mapping).all()).as(name)
                        .isEqualTo(MappedExport.channels(look.pull(pull), mapping).all());
            }
        }
    }

    private static Channels pull(ExportFile file, int number) {
        return MappedExport.channels(file.pull(number), ColumnGuess.mapping(file.sample(), Map.of(), Optional.empty()));
    }

    private static ExportFile file(String name) {
        return ExportFile.look(resource(name), Optional.empty());
    }

    private ExportFile look(String text) throws IOException {
        return ExportFile.look(Files.writeString(folder.resolve("file.csv"), text), Optional.empty());
    }

    private String refusal(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("file.csv"), text);
        InputException refusal = catchThrowableOfType(InputException.class, () -> ExportFile.look(file, Optional.empty()).pulls());
        assertThat(refusal).as(text).isNotNull();
        return refusal.oneLine();
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Notebooks as people write them: times with blanks, titles in the program's own words. */
class NoteTableTest {
    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void makeTest() {
        test = SmallTest.make(folder.resolve("test"), "ABA");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-09T10:00:00+02:00", "2026-05-09T10:00+02:00", "2026-05-09 10:00+02:00", "2026-05-09 10:00:00+02:00",
        "2026-05-09 10:00 +02:00", "2026-05-09  10:00", "2026-05-09 10:00"})
    void aBlankMayStandForTheTAndSecondsMayBeLeftOut(String time) {
        String offset = time.endsWith("+02:00") ? "" : "+02:00";
        note("pull,time\nA1-1," + time + offset + "\n").succeeded();

        assertThat(log()).containsPattern("\"startedAt\":\"2026-05-09T10:00(:00)?\\+02:00\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-09 10:00", "2026-05-09T10:00", "2026-05-09 10:00:30", "2026-05-09T10:00:30"})
    void aTimeWithoutOffsetIsRefusedWithWhatToAdd(String time) throws IOException {
        Map<String, String> before = Folders.contents(test);

        note("pull,time\nA1-1," + time + "\n").refused(3, "book.csv, line 2", "“" + time + "” is no time without its offset",
                "2026-05-09 09:42+02:00");

        assertThat(Folders.contents(test)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"10:00+02:00", "2026-05-09", "09.05.2026 10:00+02:00", "2026-05-09 25:00+02:00", "noon", "2026-05-09 10:00 CET"})
    void whatIsNoTimeIsRefused(String time) {
        note("pull,time\nA1-1," + time + "\n").refused(3, "book.csv, line 2", "“" + time + "” is no time;", "with its offset");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "intake-air (°C)|20|intake-air", "intake air (°C)|20|intake-air", "Intake air at pull start (°C)|20|intake-air",
        "coolant at pull start [°C]|88|coolant", "oil at pull start (°C)|95|oil", "oil|95C|oil", "gearbox oil (°C)|70|gearbox",
        "gearbox|70C|gearbox", "station pressure (hPa)|1003|barometer", "Relative humidity (%)|45|humidity",
        "tyre pressure (psi)|30|tyre-pressure"})
    void titlesMayBeTheWordsThatArePrintedForConditions(String title, String reading, String id) {
        note("pull," + title + "\nA1-1," + reading + "\n").succeeded();

        assertThat(log()).contains("\"" + id + "\":");
    }

    @Test
    void theUnitMayStandBehindAComma() {
        note("pull;intake air at pull start, °C;station pressure, hPa\nA1-1;20;1003\n").succeeded();

        assertThat(log()).contains("\"intake-air\":293.15", "\"barometer\":100300");
    }

    @Test
    void oneConditionInTwoColumnsIsRefused() {
        note("pull,coolant (°C),coolant at pull start (°C)\nA1-1,88,89\n")
                .refused(3, "line 2", "the columns coolant and coolant at pull start are both coolant at pull start", "leave one of them out");
    }

    private Run note(String book) {
        return Run.of("note", test, "--table", SmallTest.write(folder.resolve("book.csv"), book));
    }

    private String log() {
        return SmallTest.read(test.resolve("log.jsonl"));
    }
}

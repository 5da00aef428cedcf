package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A test that is run over midnight, or while clocks are changed, comes to what it comes to by day. All invented. */
class NightTest {
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2 B2-1 B2-2 A3-1 A3-2";
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    @TempDir
    private Path folder;

    private JsonNode judged(String name, OffsetDateTime start) {
        Path test = SmallTest.make(folder.resolve(name), "ABABA", "--worthwhile", "1kW", "--drift", "linear");
        Run.at(start.minusHours(2), "seal", test).succeeded();
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 103, 103.3, 100.2, 100.1, 103.2, 103.1, 99.9,
                100.3);
        int minutes = 0;
        for (Path file : files) {
            OffsetDateTime at = start.plusMinutes(minutes).atZoneSameInstant(BERLIN).toOffsetDateTime();
            Run.at(at.plusMinutes(1), "import", test, file, "--corrected", "none", "--at", at).succeeded();
            minutes += 23;
        }
        return Run.of("judge", test, "--json").json();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-09T22:40:00+02:00", "2026-10-25T00:50:00+02:00", "2026-10-24T23:10:00+02:00", "2026-03-29T00:15:00+01:00"})
    void comesToTheSame(String start) {
        JsonNode day = judged("day", OffsetDateTime.parse("2026-05-09T10:00:00+02:00"));
        JsonNode night = judged("night", OffsetDateTime.parse(start));

        for (String field : List.of("verdict", "estimate", "interval", "pValue", "drift")) {
            assertThat(day.has(field)).as(field).isTrue();
            assertThat(night.get(field)).as(field).isEqualTo(day.get(field));
        }
        assertThat(day.path("verdict").asText()).isEqualTo("gain");
        assertThat(night.path("warnings").toString()).doesNotContain("clock contradicts", "out of order", "before the seal",
                "come from the plan");
    }

    @Test
    void theSheetCountsHoursOnBeyondMidnight() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--interval", "5", "--swap", "20");
        Path sheet = folder.resolve("sheet.html");
        Run.of("sheet", test, "--out", sheet, "--date", "2026-10-24", "--start", "23:40").succeeded();
        assertThat(SmallTest.read(sheet)).contains("23:40", "24:");
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Barometer and humidity noted once hold for the later pulls of a session, and the finding says so; figures as in FactorTest. */
class CarriedAirTest {
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2";
    /** SAE J1349 at 25 °C, 990 hPa, 50 %. */
    private static final double MOIST = 1.01920;

    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void importUncorrected() {
        test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", "sae-j1349");
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 102, 102.4, 100.1, 100.3);
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();
    }

    private void note(String pull, String... readings) {
        List<Object> words = new ArrayList<>(List.of("note", test, pull));
        for (String reading : readings) {
            words.addAll(List.of("--condition", reading));
        }
        Run.of(words.toArray()).succeeded();
    }

    private void noteIntakeAir(String celsius) {
        for (String pull : PULLS.split(" ")) {
            note(pull, "intake-air=" + celsius);
        }
    }

    private JsonNode judged() {
        return Run.of("judge", test, "--json").json();
    }

    private double factor(String pull) {
        for (JsonNode seen : judged().get("pulls")) {
            if (seen.get("pull").asText().equals(pull)) {
                return seen.get("correctionFactor").asDouble();
            }
        }
        throw new AssertionError(pull);
    }

    /** Two counted pulls an install, no warm-ups, 5 min from pull to pull, 20 more at a swap: the last pull starts 65 min after the first. */
    @Test
    void oneReadingHoldsForTheSessionAndItsAgeIsSaid() {
        noteIntakeAir("25C");
        note("A1-1", "barometer=990hPa", "humidity=50%");

        JsonNode judged = judged();
        assertThat(judged.at("/installMeans/estimate").asDouble()).isCloseTo(2 * MOIST, within(0.002));
        assertThat(judged.get("warnings").toString().replace('\u202f', ' ')).contains("5 pulls were corrected with a barometer or humidity "
                + "noted at an earlier pull of the session, the oldest 65 min before by the planned clock", "more than 60 min before A2-2 (a limit");
        assertThat(judged.at("/pulls/0/airCarriedMinutes").isNull()).isTrue();
        assertThat(judged.at("/pulls/5/airCarriedMinutes").asDouble()).isCloseTo(65, within(1e-9));
        assertThat(judged.at("/correctionFactor/A/least").asDouble()).isCloseTo(MOIST, within(1e-4));
    }

    @Test
    void theNextReadingTakesItsPlace() {
        noteIntakeAir("25C");
        note("A1-1", "barometer=990hPa", "humidity=50%");
        note("B1-1", "humidity=0%");

        assertThat(factor("A1-2")).isCloseTo(MOIST, within(1e-5));
        assertThat(factor("B1-1")).isCloseTo(1, within(1e-9));
        assertThat(factor("A2-2")).isCloseTo(1, within(1e-9));
    }

    /** 50 % at 25 °C are 15.849 hPa of vapour; at 30 °C the same vapour leaves 974.151 hPa dry: 1.18·990/974.151·√(303/298) − 0.18. */
    @Test
    void airThatWarmsKeepsItsVapour() {
        noteIntakeAir("30C");
        note("A1-1", "intake-air=25C", "barometer=990hPa", "humidity=50%");

        assertThat(factor("A2-2")).isCloseTo(1.18 * 990 / 974.151 * Math.sqrt(303.0 / 298) - 0.18, within(1e-5));
    }

    @Test
    void anOldReadingIsWarnedOfWithItsLimit() {
        int hour = 9;
        for (String pull : PULLS.split(" ")) {
            Run.of("note", test, pull, "--at", "2026-05-09T" + String.format("%02d", hour++) + ":00+02:00", "--condition",
                    "intake-air=25C").succeeded();
        }
        note("A1-1", "barometer=990hPa", "humidity=50%");

        assertThat(judged().get("warnings").toString().replace('\u202f', ' ')).contains("the oldest 300 min before; a reading holds",
                "more than 60 min before B1-1, B1-2, A2-1, A2-2 (a limit of common practice, no source)");
    }

    @Test
    void neitherBackwardNorIntoAnotherSessionNorWithoutItsIntakeAir() {
        noteIntakeAir("25C");
        note("A1-2", "barometer=990hPa", "humidity=50%");
        Run.of("judge", test).refused(3, "station pressure at A1-1; relative humidity at A1-1;");

        Path days = SmallTest.make(folder.resolve("days"), "ABA|ABA", "--correction", "sae-j1349", "--pulls", "1");
        List<Path> files = SmallTest.exports(folder.resolve("more"), "A1-1 B1-1 A2-1 A3-1 B2-1 A4-1", 100, 102, 100.1, 100.2, 102.3, 100.4);
        Run.of(SmallTest.words("import", days, files, "--corrected", "none")).succeeded();
        for (String pull : List.of("A1-1", "B1-1", "A2-1", "A3-1", "B2-1", "A4-1")) {
            Run.of("note", days, pull, "--condition", "intake-air=25C").succeeded();
        }
        Run.of("note", days, "A1-1", "--condition", "barometer=990hPa", "--condition", "humidity=50%").succeeded();
        Run.of("judge", days).refused(3, "station pressure at A3-1, B2-1, A4-1");
    }

    @Test
    void theReportHasAColumnOfFactors() {
        noteIntakeAir("25C");
        note("A1-1", "barometer=990hPa", "humidity=50%");
        Path page = folder.resolve("report.html");
        Run.of("report", test, "--out", page).succeeded();

        assertThat(SmallTest.read(page).replace('\u202f', ' ')).contains("correction factor", "1.0192 (air noted 65 min before)",
                "ran from 1.0192 to 1.0192 under A and from 1.0192 to 1.0192 under B");
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan that names a correction, and exports that came in otherwise: brought to it by the air noted at each pull. */
class CorrectedPlanTest {
    private static final String PULLS = "A1-1 A1-2 B1-1 B1-2 A2-1 A2-2";
    /** SAE J1349 at 25 °C, 990 hPa, dry is 1; at 25 °C, 990 hPa, 50 % it is 1.01920, DIN 70020 is 1.03193 (computed, as in FactorTest). */
    private static final double MOIST = 1.01920;
    private static final double DIN = 1.03193;

    @TempDir
    private Path folder;

    private Path test(String correction, String imported) {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", correction);
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 102, 102.4, 100.1, 100.3);
        Run.of(SmallTest.words("import", test, files, "--corrected", imported)).succeeded();
        return test;
    }

    private static void note(Path test, String pull, String humidity) {
        Run.of("note", test, pull, "--condition", "intake-air=25C", "--condition", "barometer=990hPa", "--condition",
                "humidity=" + humidity).succeeded();
    }

    private static double estimate(Path test) {
        return Run.of("judge", test, "--json").json().get("installMeans").get("estimate").asDouble();
    }

    @Test
    void rawExportsAreCorrectedByTheAirNotedAfterTheImport() {
        Path test = test("sae-j1349", "none");
        String before = SmallTest.read(test.resolve("pulls/B1-1.csv"));
        for (String pull : PULLS.split(" ")) {
            note(test, pull, pull.startsWith("B") ? "50%" : "0%");
        }

        assertThat(estimate(test)).isCloseTo(102.2 * MOIST - 100.2, within(0.002));
        assertThat(SmallTest.read(test.resolve("pulls/B1-1.csv"))).isEqualTo(before);
        JsonNode warnings = Run.of("judge", test, "--json").json().get("warnings");
        assertThat(warnings.toString()).contains("1.0192").contains("steps by up to").contains("B1-1, A2-1");
    }

    /** The factor stands twice between the columns, whatever they are called; of two that do not say, that is said. */
    @ParameterizedTest
    @CsvSource({"Power uncorrected (kW), Power SAE (kW), corrected twice", "Power (kW), Corrected power (kW), corrected twice",
        "Power (kW), Power STD (kW), corrected twice", "Power 1 (kW), Power 2 (kW), cannot be checked"})
    void aCorrectionAppliedTwiceIsSeenUnderTheUsualNames(String raw, String corrected, String said) {
        Path test = SmallTest.make(folder.resolve("twice"), "ABA", "--correction", "sae-j1349");
        note(test, "A1-1", "50%");
        StringBuilder log = new StringBuilder("Engine Speed (rpm)," + raw + "," + corrected + "\n");
        for (int rpm = 2000; rpm <= 7000; rpm += 25) {
            log.append(String.format(Locale.ROOT, "%d,%.3f,%.3f%n", rpm, rpm / 50.0, rpm / 50.0 * MOIST * MOIST));
        }
        Path file = SmallTest.write(folder.resolve("A1-1.csv"), log.toString());

        assertThat(Run.of("import", test, file, "--corrected", "sae-j1349", "--column", "power=\"" + corrected + "\"").words()).contains(said);
    }

    @Test
    void theAirMayBeNotedBeforeTheImport() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", "sae-j1349");
        for (String pull : PULLS.split(" ")) {
            note(test, pull, "50%");
        }
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 102, 102.4, 100.1, 100.3);
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).succeeded();

        assertThat(estimate(test)).isCloseTo(2 * MOIST, within(0.002));
        assertThat(Run.of("judge", test, "--json").json().get("warnings").toString()).doesNotContain("steps by");
    }

    @Test
    void anotherStandardIsUndoneFirst() {
        Path test = test("sae-j1349", "din-70020");
        for (String pull : PULLS.split(" ")) {
            note(test, pull, "50%");
        }

        assertThat(estimate(test)).isCloseTo(2 / DIN * MOIST, within(0.002));
    }

    @Test
    void whatIsCorrectedAlreadyIsUsedAsItIs() {
        Path test = test("sae-j1349", "sae-j1349");

        assertThat(estimate(test)).isCloseTo(2, within(1e-9));
    }

    @Test
    void unknownStaysAWarning() {
        Path test = test("sae-j1349", "unknown");

        assertThat(estimate(test)).isCloseTo(2, within(1e-9));
        assertThat(Run.of("judge", test, "--json").json().get("warnings").toString()).contains("not known whether");
    }

    @Test
    void allMissingReadingsAreNamedInOneLineWithWhatToType() {
        Path test = test("sae-j1349", "none");
        for (String pull : List.of("A1-1", "A1-2", "B1-1", "A2-1")) {
            note(test, pull, "50%");
        }

        Run.of("judge", test).refused(3, "intake air at pull start at B1-2, A2-2", "fairpull note FOLDER B1-2 --condition intake-air=…; "
                + "fairpull note FOLDER A2-2 --condition intake-air=…");
        Run.of("exclude", test, "B1-2", "--because", "intake air was not read").succeeded();
        Run.of("exclude", test, "A2-2", "--because", "intake air was not read").succeeded();
        Run.of("judge", test).succeeded();
    }

    @Test
    void whereNothingIsNotedTheFirstPullsAreSpeltOutAndTheRestIsCounted() {
        Path test = test("sae-j1349", "none");

        Run.of("judge", test).refused(3, "station pressure at A1-1, A1-2, B1-1, B1-2, A2-1, A2-2", "relative humidity at A1-1",
                "fairpull note FOLDER A1-1 --condition intake-air=… --condition barometer=… --condition humidity=…", "likewise for 3 more",
                "then hold for the later pulls");
    }

    /** Its exponent follows fuel and boost through the pull (UN R85, annex 5), which no export gives. */
    @Test
    void compressionIgnitionIsTakenCorrectedOrRefusedBeforeAnythingIsWritten() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", "iso-1585-ci");
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 102, 102.4, 100.1, 100.3);

        assertThat(Run.of("check", test).words()).contains("iso-1585-ci follows fuel and boost", "--corrected iso-1585-ci");
        Run.of(SmallTest.words("import", test, files, "--corrected", "none")).refused(3, "A1-1.csv", "fuel rate",
                "--corrected iso-1585-ci");
        assertThat(test.resolve("pulls/A1-1.csv")).doesNotExist();
        Run.of(SmallTest.words("import", test, files, "--corrected", "iso-1585-ci")).succeeded();
        assertThat(estimate(test)).isCloseTo(2, within(1e-9));
    }

    @Test
    void valuesCorrectedForCompressionIgnitionCannotBeUndone() {
        Path test = SmallTest.make(folder.resolve("test"), "ABA", "--correction", "sae-j1349");
        List<Path> files = SmallTest.exports(folder.resolve("exports"), PULLS, 100, 100.4, 102, 102.4, 100.1, 100.3);

        Run.of(SmallTest.words("import", test, files, "--corrected", "iso-1585-ci")).refused(3, "A1-1.csv", "--corrected none");
        assertThat(Run.of("check", test).words()).doesNotContain("iso-1585-ci");
    }

    @Test
    void factorsOutsideTheirRangeAreNamed() {
        Path test = test("sae-j1349", "none");
        for (String pull : PULLS.split(" ")) {
            Run.of("note", test, pull, "--condition", "intake-air=25C", "--condition", "barometer=880hPa", "--condition", "humidity=50%")
                    .succeeded();
        }

        assertThat(Run.of("judge", test, "--json").json().get("warnings").toString()).contains("outside 0.93 to 1.07");
    }

    @Test
    void aReadingThatCannotBeIsNotNoted() {
        Path test = test("sae-j1349", "none");

        Run.of("note", test, "A1-1", "--condition", "humidity=140%").refused(3, "A1-1", "140 %");
        Run.of("note", test, "A1-1", "--condition", "barometer=29.9hPa").refused(3, "29.9 inHg");
        Run.of("note", test, "A1-1", "--condition", "intake-air=77C").refused(3, "77 °C", "77 °F (25.0 °C) is likely meant");
    }
}

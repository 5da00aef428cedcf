package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the day itself says against a finding: times before the seal or out of order, aborted pulls, gates never read, an order not drawn. */
class WhatTheDaySaysTest {
    private static final OffsetDateTime DAY = OffsetDateTime.parse("2026-05-09T09:00:00+02:00");

    @TempDir
    private Path folder;
    private Path test;

    @BeforeEach
    void make() throws IOException {
        test = SmallTest.make(folder.resolve("test"), "ABA");
        Run.at(DAY.minusDays(1), "seal", test).succeeded();
        Run.of(SmallTest.words("import", test, SmallTest.exports(folder, "A1-1 B1-1 A2-1", 100, 104, 100.5), "--corrected", "none")).succeeded();
    }

    @Test
    void aPullThatStartedBeforeTheSealIsNamed() {
        assertThat(warnings()).noneMatch(said -> said.contains("before the plan was sealed"));
        Run.of("note", test, "B1-1", "--at", DAY.minusDays(3)).succeeded();

        assertThat(warnings()).anyMatch(said -> said.startsWith("Started before the plan was sealed, by their times: B1-1"));
    }

    @Test
    void timesAgainstTheOrderOfInstallsAreNamed() {
        Run.of("note", test, "A1-1", "--at", DAY).succeeded();
        Run.of("note", test, "B1-1", "--at", DAY.plusHours(2)).succeeded();
        Run.of("note", test, "A2-1", "--at", DAY.plusHours(1)).succeeded();

        assertThat(warnings()).anyMatch(said -> said.contains("before the one before them was done: A2"));
    }

    @Test
    void timesInTheOrderOfInstallsAreNot() {
        Run.of("note", test, "A1-1", "--at", DAY).succeeded();
        Run.of("note", test, "B1-1", "--at", DAY.plusHours(1)).succeeded();
        Run.of("note", test, "A2-1", "--at", DAY.plusHours(2)).succeeded();

        assertThat(warnings()).noneMatch(said -> said.contains("before the one before them was done"));
    }

    @Test
    void abortedAndMissingPullsAreNamedWithTheirReasons() {
        Run.of("note", test, "A1-2", "--aborted", "felt wrong").succeeded();

        assertThat(warnings()).anyMatch(said -> said.startsWith("Begun and not finished: A1-2 (felt wrong)"))
                .anyMatch(said -> said.startsWith("Not in yet: ") && said.contains("B1-2") && !said.contains("A1-2"));
    }

    @Test
    void gatesThatNobodyReadAreNamed() {
        assertThat(warnings()).anyMatch(said -> said.startsWith("Never noted, so these gates") && said.contains("coolant"));
        Run.of("note", test, "A1-1", "--condition", "coolant=90C").succeeded();

        assertThat(warnings()).anyMatch(said -> said.startsWith("Never noted, so these gates") && !said.contains("coolant"));
    }

    @Test
    void aGateThatWasReadButNotAtTheReferenceIsNamed() {
        Run.of("note", test, "A1-2", "--condition", "coolant=90C").succeeded();

        assertThat(warnings()).anyMatch(said -> said.startsWith("Never noted, so these gates") && said.contains("coolant at pull start at A1-1"));
    }

    @Test
    void aCorrectionThatIsNotKnownIsNotTakenFromWhatIsRemembered() {
        assertThat(warnings()).noneMatch(said -> said.contains("already corrected for air"));
        Run taken = Run.of("import", test, SmallTest.export(folder.resolve("A1-2.csv"), 100.2), "--corrected", "unknown", "--json");

        assertThat(taken.json().at("/taken/0/doubts").toString()).contains("--corrected");
        assertThat(warnings()).anyMatch(said -> said.contains("already corrected for air"));
    }

    @Test
    void anOrderThatItsSeedDoesNotDrawIsNotSealed() throws IOException {
        Path drawn = SmallTest.make(folder.resolve("drawn"), "ABABAB", "--draw", "5");
        Run.of("seal", drawn).succeeded();
        Path forged = SmallTest.make(folder.resolve("forged"), "ABABAB", "--draw", "5");
        String plan = SmallTest.read(forged.resolve("plan.json"));
        Files.writeString(forged.resolve("plan.json"), plan.replace("\"seed\" : 5", "\"seed\" : 6"));

        Run.of("seal", forged).refused(3, "plan.json", "not the one that its seed draws", "chosen");
    }

    @Test
    void theLogsLengthAndCodeStandInEveryFinding() {
        String before = logState();
        Run.of("note", test, "--remark", "dry").succeeded();

        assertThat(before).contains("4 entries");
        assertThat(logState()).contains("5 entries").isNotEqualTo(before);
    }

    private String logState() {
        return warnings().stream().filter(said -> said.startsWith("The log holds")).findFirst().orElseThrow();
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        Run.of("judge", test, "--json").json().get("warnings").forEach(warning -> warnings.add(warning.asText()));
        return warnings;
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb on the publications that come with the project, and on input that cannot be used. */
class AuditVerbTest {
    private static final Path PUBLISHED = Path.of("demo-data/published");

    @TempDir
    private Path folder;

    @Test
    void aSoundPublicationShowsItsGainAndNotTheLargerClaim() {
        JsonNode claims = audit("sound.json").get("claims");

        assertThat(claims.get(0).get("grade").asText()).isEqualTo("shown");
        assertThat(claims.get(1).get("grade").asText()).isEqualTo("not shown");
        assertThat(claims.get(1).get("reason").asText()).isEqualTo("figures fall short");
    }

    @Test
    void twoNumbersShowNothingAndWhatIsNotDisclosedIsListed() {
        JsonNode audited = audit("silent.json");

        assertThat(audited.get("claims").get(0).get("grade").asText()).isEqualTo("not shown");
        assertThat(audited.get("notDisclosed")).hasSize(12);
    }

    /** Paired t of the trial of 1953: 0.43 for the additive, 2.38 for the salts (computed from the published table). */
    @Test
    void theBatteryTrialDoesNotShowWhatTheAdditiveWasSoldFor() {
        JsonNode audited = audit("battery-trial-1953.json");

        assertThat(audited.get("figures").get(0).get("t").asDouble()).isCloseTo(0.43, within(0.005));
        assertThat(audited.get("figures").get(1).get("t").asDouble()).isCloseTo(2.38, within(0.005));
        assertThat(audited.get("claims").get(0).get("grade").asText()).isEqualTo("not shown");
        assertThat(audited.get("claims").get(1).get("grade").asText()).isEqualTo("shown");
    }

    @Test
    void theHeadingSaysHowManyClaimsAreShown() {
        String silent = SmallTest.read(PUBLISHED.resolve("silent.json"));
        String claim = "{\"words\": \"3 hp more from a filter\", \"figure\": \"peak power\"}";

        assertThat(heading(silent)).isEqualTo("The claim is not shown");
        assertThat(heading(silent.replace(claim, claim + ", " + claim))).isEqualTo("Neither claim is shown");
        assertThat(heading(silent.replace(claim, claim + ", " + claim + ", " + claim))).isEqualTo("None of 3 claims is shown");
        assertThat(heading(SmallTest.read(PUBLISHED.resolve("sound.json")))).isEqualTo("1 of 2 claims is shown");
        assertThat(heading(SmallTest.read(PUBLISHED.resolve("sound.json")).replace("20 hp", "1 hp"))).isEqualTo("Both claims are shown");
    }

    private String heading(String publication) {
        Path file = folder.resolve("heading.json");
        SmallTest.write(file, publication);
        return Run.of("audit", file).succeeded().out().lines().findFirst().orElseThrow();
    }

    /** A battery is neither strapped down nor pulled, and is brought to no reference air. */
    @Test
    void ofTheBatteryTrialNothingIsAskedThatDoesNotApply() {
        assertThat(Run.of("audit", PUBLISHED.resolve("battery-trial-1953.json")).words()).contains("by the values published one by one")
                .doesNotContain("not disclosed", "strapped", "pulls", "matter most");
    }

    @Test
    void theTemplateReadsBackAndTheReportIsWritten() {
        Path file = folder.resolve("mine.json");
        SmallTest.write(file, Run.of("audit", "--template").succeeded().out());

        assertThat(Run.of("audit", file, "--html", folder.resolve("a.html"), "--pdf", folder.resolve("a.pdf")).words())
                .contains("12 things are not disclosed").contains("How many pulls or runs stand behind each figure");
        assertThat(SmallTest.read(folder.resolve("a.html"))).contains("What the figures can show").doesNotContain("<script");
        assertThat(folder.resolve("a.pdf")).isNotEmptyFile();
    }

    @Test
    void aReportThatCannotAllBeWrittenLeavesNothing() {
        Path page = folder.resolve("a.html");

        Run.of("audit", PUBLISHED.resolve("silent.json"), "--html", page, "--pdf", folder).refused(2, "is a folder");
        assertThat(page).doesNotExist();
        Run.of("audit", PUBLISHED.resolve("silent.json"), "--html", page, "--pdf", PUBLISHED.resolve("silent.json").resolve("a.pdf"))
                .refused(3, "");
        assertThat(page).doesNotExist();
    }

    @Test
    void whatSaysItselfWhatToDoIsNotToldToBeCorrectedAsWell() {
        Path file = SmallTest.write(folder.resolve("long.json"), SmallTest.read(PUBLISHED.resolve("silent.json"))
                .replace("3 hp more from a filter", "x".repeat(500)));

        assertThat(Run.of("audit", file).refused(3, "write at most 300").err()).doesNotContain("correct it there");
    }

    /** A car that is quicker by three tenths of a second has gained them, whoever forgot to say so. */
    @Test
    void ofATimeLessIsAGainUnlessItIsSaid() {
        String silent = SmallTest.read(PUBLISHED.resolve("silent.json")).replace("214 hp", "12.9 s").replace("217 hp", "12.6 s");
        Path file = SmallTest.write(folder.resolve("time.json"), silent);
        Path said = SmallTest.write(folder.resolve("said.json"), silent.replace("\"after\": \"12.6 s\"",
                "\"after\": \"12.6 s\", \"better\": \"more\""));

        assertThat(Run.of("audit", file).words()).contains("12.9 s before, 12.6 s after: +0.3 s of gain.");
        assertThat(Run.of("audit", said).words()).contains("12.9 s before, 12.6 s after: 0.3 s of loss.");
    }

    /** Invented: the manifold of the demo, on two days without leaving the straps, with a sweep that ends below its figures. */
    @Test
    void whatHardlyGoesTogetherIsAskedInTheReport() {
        Path file = folder.resolve("odd.json");
        SmallTest.write(file, SmallTest.read(PUBLISHED.resolve("sound.json")).replace("\"day\": \"same\"", "\"day\": \"different\"")
                .replace("\"6500 rpm\"", "\"5000 rpm\""));

        assertThat(Run.of("audit", file).words()).contains("To be asked", "did it stand on the rig over night?",
                "the order ABA names no change of day",
                "power at 5500 rpm stands at 5500 rpm, and the sweep runs from 2500 to 5000 rpm: was more of it run?");
    }

    @Test
    void inputThatCannotBeUsedIsRefusedInOneLineThatNamesIt() {
        String silent = SmallTest.read(PUBLISHED.resolve("silent.json"));

        refused(silent.replace("\"changed\"", "\"colour\": \"red\", \"changed\""), "line ", "colour: no such field", "known here: changed");
        refused(silent.replace("214 hp", "many"), "line", "214.3 hp", "many");
        refused(silent.replace("217 hp", "217 N·m"), "printed in hp and in N·m");
        refused(silent.replace("\"figure\": \"peak power\"", "\"figure\": \"torque\""), "which is no figure of the publication");
        refused(SmallTest.read(PUBLISHED.resolve("sound.json")).replace("\"rig\": \"same\"", "\"rig\": \"different\""),
                "bad.json, line 13, column", "procedure.strapDown: the rigs differ, and the car stayed strapped down");
        refused(silent.replace("214 hp", "214,3 hp"), "line ", "column ", "has a comma in its number", "write 214.3 hp");
        refused(silent.replace("\"214 hp\"", "214"), "line ", "column ", "with its unit");
        refused(silent.replace("214 hp", "1e308 hp"), "line ", "lies between");
        refused(silent.replace("\"changed\": \"", "\"changed\": \"\\u202e"), "line ", "control character");
        refused("{}", "not a publication", "--template");
        refused(silent.replace("3 hp more from a filter", ""), "line ", "a claim is empty");
        refused(silent.replace("3 hp more from a filter", "x".repeat(500)), "line", "a claim has 500 characters; write at most 300");
        Run.of("audit").refused(2, "--template");
        Run.of("audit", folder.resolve("none.json")).refused(3, "no such file");
    }

    @Test
    void valuesAreHeldAgainstTheirFiguresInWords() {
        String silent = SmallTest.read(PUBLISHED.resolve("silent.json"));
        Path file = SmallTest.write(folder.resolve("values.json"), silent.replace("\"after\": \"217 hp\"", "\"after\": \"217 hp\", \"values\": "
                + "{\"before\": [\"213 hp\", \"215 hp\"], \"after\": [\"203 hp\", \"205 hp\"], \"paired\": \"yes\"}"));

        assertThat(Run.of("audit", file).words())
                .contains("after is printed as 217 hp, and its values average 204.0 hp; rounding allows ±1.0 hp.")
                .contains("after lies 10 hp below the one before. Values that do not scatter cannot be tested");
        JsonNode checks = Run.of("audit", file, "--json").json().get("checks");
        assertThat(checks.get(1).get("found").get(0).get("ofValues").asDouble()).isCloseTo(204, within(1e-9));
        assertThat(checks.get(2).get("found").get(0).get("difference").asDouble()).isCloseTo(-10, within(1e-9));
    }

    /** Half a unit of the fourth decimal each allows 0.0001 bar; in hundredths both would read 0.82 bar. */
    @Test
    void smallFiguresAreToldWithTheDigitsThatMatter() {
        String silent = SmallTest.read(PUBLISHED.resolve("silent.json")).replace("214 hp", "0.8212 bar");
        Path file = SmallTest.write(folder.resolve("boost.json"), silent.replace("\"after\": \"217 hp\"", "\"after\": \"0.8240 bar\", "
                + "\"values\": {\"before\": [\"0.8210 bar\", \"0.8214 bar\"], \"after\": [\"0.8221 bar\", \"0.8225 bar\"], \"paired\": \"no\"}"));

        assertThat(Run.of("audit", file).words())
                .contains("after is printed as 0.8240 bar, and its values average 0.82230 bar; rounding allows ±0.00010 bar.");
    }

    /** 217.9 hp − 211.9 hp and a claim of 6 hp, which pass through watts. */
    @Test
    void whatWasPublishedStandsInTheFileToTheDigit() {
        Path file = SmallTest.write(folder.resolve("digits.json"), SmallTest.read(PUBLISHED.resolve("silent.json"))
                .replace("214 hp", "211.9 hp").replace("217 hp", "217.9 hp").replace("\"figure\": \"peak power\"}",
                        "\"figure\": \"peak power\", \"gain\": \"6.1 hp\"}"));

        assertThat(Run.of("audit", file, "--json").succeeded().out()).contains("\"claimed\" : 6.1,", "\"published\" : 6,");
    }

    @Test
    void whatOnlySteersATerminalReachesNoPage() {
        Path file = SmallTest.write(folder.resolve("steering.json"), SmallTest.read(PUBLISHED.resolve("silent.json"))
                .replace("\"title\": \"", "\"title\": \"\\u001b[2J\\u0007").replace("peak power", "peak\\u0008 power"));

        Run.of("audit", file, "--html", folder.resolve("a.html"), "--pdf", folder.resolve("a.pdf")).succeeded();
        assertThat(SmallTest.read(folder.resolve("a.html")).chars().filter(letter -> letter < ' ' && letter != '\n')).isEmpty();
        assertThat(folder.resolve("a.pdf")).isNotEmptyFile();
    }

    private void refused(String text, String... words) {
        Path file = folder.resolve("bad.json");
        SmallTest.write(file, text);
        Run.of("audit", file).refused(3, words);
    }

    private static JsonNode audit(String name) {
        return Run.of("audit", PUBLISHED.resolve(name), "--json").json();
    }
}

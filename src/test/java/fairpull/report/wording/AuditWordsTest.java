package fairpull.report.wording;

import static org.assertj.core.api.Assertions.assertThat;

import fairpull.domain.audit.AuditAnswer;
import fairpull.engine.audit.Audit;
import fairpull.io.json.PublicationJson;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of publications that were made up for it. */
class AuditWordsTest {
    private static final String THIN = Numbers.THIN;

    /** 150 PS are 110.325 kW (a PS is 75 kgf·m/s, 735.49875 W): the difference falls between the digits of either figure. */
    @ParameterizedTest
    @CsvSource({"110 kW, 150 PS, +0.3 kW of gain", "301.2 hp, 290.8 hp, 10.4 hp of loss", "200.0 hp, 216.5 hp, +16.5 hp of gain",
        "200 hp, 200 hp, no difference", "214 hp, 217.5 hp, +3.5 hp of gain"})
    void theDifferenceIsAGainALossOrNone(String before, String after, String said) {
        assertThat(figures(before, after, "")).contains(": " + said.replace(" kW", THIN + "kW").replace(" hp", THIN + "hp") + ".");
    }

    @Test
    void equalFiguresLeaveNothingForChance() {
        assertThat(figures("200 hp", "200 hp", "")).contains("both figures are equal").doesNotContain("Above a pull scatter of").doesNotContain("100" + THIN + "%");
        assertThat(figures("200 hp", "201 hp", "")).contains("Above a pull scatter of");
    }

    /** Expected largest of five standard normal values: 1.163 (Tippett 1925), at 0.7 % of 301.2 hp 2.5 hp. */
    @ParameterizedTest
    @CsvSource({"5, best, 1, single, −2.5, 'a single pull after, against the best of 5 pulls before, takes 2.5 hp off the gain'",
        "1, single, 5, best, +2.5, 'the best of 5 pulls after, against a single pull before, adds 2.5 hp'",
        "5, mean, 5, best, +2.5, 'the best of 5 pulls after, against the mean of 5 pulls before, adds 2.5 hp'"})
    void pickingIsToldWithItsSignAndWhatIsQuoted(int before, String quotedBefore, int after, String quotedAfter, String adds, String said) {
        AuditAnswer answer = answer("301.2 hp", "305.8 hp", quotes(before, quotedBefore, after, quotedAfter));

        assertThat(text(AuditWords.figures(answer))).contains("picking the best of several " + adds + THIN + "hp");
        assertThat(text(AuditWords.checks(answer))).contains(said.replace(" hp", THIN + "hp")).doesNotContain("picking among pulls adds nothing");
    }

    @Test
    void theBestOfAsManyAddsNothing() {
        AuditAnswer answer = answer("301.2 hp", "305.8 hp", quotes(5, "best", 5, "best"));

        assertThat(text(AuditWords.figures(answer))).contains("picking the speed").doesNotContain("picking the best of several");
        assertThat(text(AuditWords.checks(answer))).contains("picking among pulls adds nothing");
    }

    /** The same figures in a unit that makes them small: 0.0002 against 0.0003 of it are no less than 200 against 300. */
    @Test
    void smallFiguresAreNotTakenForNone() {
        assertThat(figures("0.00200 hp", "0.00300 hp", "")).contains("scatter of the pulls ±0.000020" + THIN + "hp");
    }

    /** Scatter so small that a true 1 % always comes out, and comes out right. */
    @Test
    void whatIsNotTooLargeIsNotCalledTooLarge() {
        String scatter = "\"scatter\": {\"pull\": {\"deviation\": \"0.01 %\"}, \"refit\": {\"deviation\": \"0.01 %\"}}";

        assertThat(figures("200.00 hp", "204.00 hp", scatter)).contains("at its true size on average").doesNotContain("1 times too large");
        assertThat(figures("200.00 hp", "204.00 hp", "")).contains("times too large on average");
    }

    @Test
    void aLossIsToldAsOneWhereAGainIsClaimed() {
        assertThat(text(AuditWords.claims(answer("201.0 hp", "199.6 hp", "\"day\": \"same\"")))).contains("the printed figures come to 1.4"
                + THIN + "hp of loss, where a gain is claimed, however they were rounded.");
    }

    /** At 1600 m the standard atmosphere has 835.2 hPa, 825 without 10 hPa of vapour; 1.18 × 990 ÷ 825.2 − 0.18 = 1.2356. */
    @Test
    void twoStandardsAndTwoBarometersComeWithWhatTheyMake() {
        String standards = "\"correctionBefore\": \"none\", \"correctionAfter\": \"sae-j1349\", \"elevation\": \"1600 m\"";
        String barometers = "\"barometerBefore\": \"sea-level\", \"barometerAfter\": \"station\", \"correctionBefore\": "
                + "\"sae-j1349\", \"correctionAfter\": \"sae-j1349\", \"elevation\": \"350 m\"";

        assertThat(text(AuditWords.claims(answer("200 hp", "247 hp", standards)))).contains("one correction was quoted before and another "
                + "after, which alone gives an unchanged car +23.6" + THIN + "% at 25" + THIN + "°C and 825" + THIN + "hPa of dry air.");
        assertThat(text(AuditWords.claims(answer("200 hp", "210 hp", barometers)))).contains("at 350" + THIN
                + "m that alone gives an unchanged car +5.1" + THIN + "%.");
    }

    /** A list of values that are installs or specimens is its own scatter: nothing is said of a rig that was never asked. */
    @Test
    void theScatterOfARigIsNotToldBesideValuesThatRepeatInstalls() {
        assertThat(values("specimen")).contains("t test of its values").doesNotContain("Chance alone", "If 1" + THIN + "% were true",
                "scatter of the pulls").contains("another rig");
        assertThat(values("pull")).contains("at the scatter that is known (pulls 0.5" + THIN + "%)", "Chance alone");
    }

    /** Boole's inequality: 2 × 2.5 %. */
    @Test
    void severalClaimsAreSaidToBeJudgedEachByItself() {
        assertThat(several("10.0 s", "9.0 s")).contains("each is judged by itself").contains("gain in up to 5" + THIN + "% of publications");
        assertThat(several("10.0 s", "10.0 s")).doesNotContain("each is judged by itself");
    }

    /** Two times of which less is a gain, as nothing else is said of them. */
    private static String several(String before, String after) {
        String scatter = "{\"pull\": {\"deviation\": \"0.01 s\"}, \"refit\": {\"deviation\": \"0.01 s\"}, \"day\": {\"deviation\": \"0.01 s\"}}";
        return text(AuditWords.claims(Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "%s", "after": "%s"},
                 {"name": "g", "before": "%s", "after": "%s"}], "procedure": {"scatter": %s, "allElse": "same", "returned": "yes",
                 "namedBefore": "yes", "rig": "same", "pullsBefore": "3", "quotedBefore": "mean", "pullsAfter": "3", "quotedAfter": "mean"},
                 "claims": [{"words": "quicker", "figure": "f"}, {"words": "quicker still", "figure": "g"}]}
                """.formatted(before, after, before, after, scatter), "made up"), List.of())));
    }

    /** Pooled standard deviation of either side 1 hp by hand: 199, 200, 201. */
    private static String values(String each) {
        return text(AuditWords.figures(Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "200 hp", "after": "210 hp",
                 "values": {"before": ["199 hp", "200 hp", "201 hp"], "after": ["209 hp", "210 hp", "211 hp"], "paired": "no", "each": "%s"}}],
                 "claims": [{"words": "more", "figure": "f"}]}
                """.formatted(each), "made up"), List.of())));
    }

    /** 0.7 % of 200 hp times the expected maximum of five, 1.16296 (Tippett 1925), is 1.628 hp; 0.5 % is 1.163 hp. */
    @Test
    void whatPickingAddsIsToldWithItsScatter() {
        String scatter = ", \"scatter\": {\"pull\": {\"deviation\": \"0.5 %\"}}";

        assertThat(text(AuditWords.checks(answer("200.0 hp", "204.0 hp", quotes(1, "single", 5, "best")))))
                .contains("adds 1.6" + THIN + "hp on average without any change, at ordinary scatter.");
        assertThat(text(AuditWords.checks(answer("200.0 hp", "204.0 hp", quotes(1, "single", 5, "best") + scatter))))
                .contains("adds 1.2" + THIN + "hp on average without any change, at the scatter that is known.");
    }

    @Test
    void aPickedSpeedSaysOfWhichSweepAndHowOften() {
        assertThat(text(AuditWords.checks(answer("200.0 hp", "204.0 hp", "\"namedBefore\": \"no\""))))
                .contains("largest difference of a sweep of usual length beyond 3.3").contains("in 5" + THIN + "% of unchanged pairs.");
    }

    @Test
    void aReasonStandsWithoutItsGrade() {
        AuditAnswer answer = answer("200 hp", "216 hp", "");
        String reason = AuditWords.reason(answer, answer.claims().get(0));

        assertThat(AuditWords.claims(answer).get(0).text()).isEqualTo(AuditWords.grade(answer.claims().get(0).graded().grade()) + ": " + reason);
    }

    private static String quotes(int before, String quotedBefore, int after, String quotedAfter) {
        return "\"pullsBefore\": \"%d\", \"quotedBefore\": \"%s\", \"pullsAfter\": \"%d\", \"quotedAfter\": \"%s\""
                .formatted(before, quotedBefore, after, quotedAfter);
    }

    private static String figures(String before, String after, String procedure) {
        return text(AuditWords.figures(answer(before, after, procedure)));
    }

    private static String text(List<Said> said) {
        return said.stream().flatMap(one -> Stream.of(one.head(), one.text())).collect(Collectors.joining("\n"));
    }

    private static AuditAnswer answer(String before, String after, String procedure) {
        return Audit.of(PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{"name": "f", "before": "%s", "after": "%s"}],
                 "procedure": {%s}, "claims": [{"words": "more", "figure": "f"}]}
                """.formatted(before, after, procedure), "made up"), List.of());
    }
}

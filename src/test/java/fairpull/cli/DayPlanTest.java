package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Working hours from {@code new} through {@code check}, {@code amend} and the plan file. */
class DayPlanTest {
    private static final String SCATTERS = "--worthwhile 3kW --pull-scatter 1.2kW --refit-scatter 0.6kW";

    @TempDir
    private Path folder;

    /** One session in the morning, one after noon: each keeps the breaks of its own hours. */
    @Test
    void eachSessionKeepsTheBreaksOfItsOwnHours() {
        Path test = make("ABA|BAB", "--start", "9:00|13:00", "--end", "12:00|17:00", "--break", "9:45+15", "--break", "14:15+30");

        String words = Run.of("check", test).words();
        assertThat(words).containsPattern("Day 1: starts at 09:00[^D]*break 09:45 to 10:00").containsPattern("Day 2: starts at 13:00.*break 14:15 to 14:45");
        assertThat(words.split("break ")).hasSize(3);
    }

    /** Two counted pulls, no warm-ups: 30 + 3 × 10 + 2 × 20 = 100 minutes, and a break of 15 in the first swap. */
    @Test
    void checkSaysTheClockInWordsAndFigures() {
        Path test = make("ABA", "--start", "9:00", "--end", "17:00", "--break", "9:45+15");

        assertThat(Run.of("check", test).words()).contains("Day 1: starts at 09:00, first pull after 30 min; "
                + "A1 09:30 to 09:40; break 09:45 to 10:00; B1 10:15 to 10:25; A2 10:45 to 10:55; "
                + "done at 10:55, 6 h 5 min before the end of day at 17:00.").doesNotContain("does not fit", "would fit");
        JsonNode json = Run.of("check", test, "--json").json();
        assertThat(json.get("fits").asBoolean()).isTrue();
        assertThat(json.get("remedies")).isEmpty();
        JsonNode day = json.get("clock").get(0);
        assertThat(day.get("start").asText()).isEqualTo("09:00");
        assertThat(day.get("minutes").asDouble()).isEqualTo(115);
        assertThat(day.get("events")).extracting(event -> event.get("kind").asText()).containsExactly("set-up", "pull", "pull", "swap", "break",
                "swap", "pull", "pull", "swap", "pull", "pull");
    }

    @Test
    void checkSaysWhatDoesNotFitAndWhatWould() {
        Path test = make("ABABA", "--start", "9:00", "--end", "11:20");

        assertThat(Run.of("check", test).words())
                .contains("Day 1 does not fit: it is done at 11:40, 20 min after the end of day at 11:20.", "Any one of these would fit:",
                        "- 1 counted pull per install instead of 2", "- ABBA instead of ABABA; the smallest gain found is ",
                        "- start of day at 08:40 instead of 09:00; the smallest gain found stays ", "- end of day at 11:40 instead of 11:20",
                        "- one day more of the same hours: A");
        assertThat(Run.of("check", test, "--json").json().get("remedies")).hasSizeGreaterThan(3)
                .allMatch(remedy -> remedy.get("detectableGain").isNumber());
    }

    @Test
    void aBreakWithinAnInstallIsWarnedOf() {
        Path test = make("ABA", "--start", "9:00", "--break", "9:34+20");

        assertThat(Run.of("check", test).words()).contains("The break at 09:34 falls between pulls of A1", "to 09:30", "to 09:40");
    }

    @Test
    void sessionsMayHaveHoursOfTheirOwn() {
        Path test = make("ABA|BAB", "--start", "9:00|13:30", "--end", "12:00|16:00");

        assertThat(Run.of("check", test).words()).contains("done at 10:40, 1 h 20 min before the end of day at 12:00",
                "Day 2: starts at 13:30", "done at 15:10, 50 min before the end of day at 16:00");
    }

    private Path make(String sequence, Object... hours) {
        Object[] words = Stream.concat(Stream.of(SCATTERS.split(" ")), Stream.of(hours)).toArray();
        return SmallTest.make(folder.resolve("test"), sequence, words);
    }

    @Test
    void withoutHoursThePlanFileSaysNothingOfThem() {
        Path test = make("ABA");

        assertThat(SmallTest.read(test.resolve("plan.json"))).doesNotContain("hours");
        assertThat(Run.of("check", test).words()).contains("Day 1: from its start", "A2 1:30 to 1:40; done after");
    }

    @Test
    void aSealedPlanGetsItsHoursByAmendment() {
        Path test = make("ABA");
        Run.of("seal", test).succeeded();

        Run.of("amend", test, "--set", "sequence.sessions.0.hours={\"start\":\"08:30\",\"end\":\"12:00\",\"breaks\":[]}", "--because", "booked")
                .succeeded();

        assertThat(Run.of("check", test).words()).contains("starts at 08:30").contains("before the end of day at 12:00");
        Run.of("amend", test, "--set", "question.hours=3", "--because", "x").refused(3, "no such field");
        Run.of("amend", test, "--set", "sequence.sessions.0.hours.end=07:00", "--because", "x").refused(3, "not after its start");
        Run.of("amend", test, "--set", "sequence.sessions.0.hours.end=noon", "--because", "x").refused(3, "time of day");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"--start 9:00 --end 9:20; shorter than one install, which takes 40 min",
        "--start 9:00 --end 8:00; not after its start", "--end 17:00; --start", "--break 12:30+45; --start", "--start 25:00; time of day",
        "--start 9:00 --break 12:30; 12:30+45", "--start 9:00 --break 12:30+0; longer than 0", "--start 9:00 --break 8:00+30; starts before the day",
        "--start 9:00 --break 12:00+30 --break 12:10+30; 12:10", "--start 9:00|10:00|11:00; expected one time"})
    void hoursThatCannotBeAreAnsweredInOneLine(String hours, String said) {
        Object[] words = ("new " + folder.resolve("fresh") + " --part-a a --part-b b --measure X --sequence ABA --pulls 2 --warm-ups 0 " + hours)
                .split(" ");
        for (int i = 0; i < words.length; i++) {
            words[i] = words[i].equals("X") ? "peak power in kW" : words[i];
        }

        Run.of(words).refused(2, said);

        assertThat(folder.resolve("fresh")).doesNotExist();
    }
}

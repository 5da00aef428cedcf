package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code search} from the command line: what it prints is what {@code size} prints. */
class SearchVerbTest {
    private static final String SCATTER = " --pull-scatter 1.2 --refit-scatter 0.6 --gain 3 --unit hp ";
    private static final Pattern ROW = Pattern.compile(" *\\d+  ([AB]+) +(\\d+) +(\\d+)  (\\d.*?(?:h|min)) +([\\d.]+) .*");

    @ParameterizedTest
    @ValueSource(strings = {"--hours 6", "--hours 9 --drift linear --warm-ups 1-3", "--hours 7h --refit-df 11 --any-first --alpha 0.1",
        "--hours 400min --sides one --power-wanted 0.9 --interval 4 --swap 35", "--hours 8 --one-way --refit-df 6",
        "--hours 9 --drift linear --start 9:00 --break 10:30+20 --break 12:30+45"})
    void everyFigureIsThatOfSize(String options) {
        JsonNode front = run("search" + SCATTER + options + " --json").json().get("front");

        assertThat(front).hasSizeGreaterThan(3).allSatisfy(row -> {
            JsonNode size = size(row.get("sequence").asText(), row.get("pulls").asText(), row.get("warmUps").asText(), options, true).json();
            for (String figure : List.of("minutes", "detectableGain", "power", "standardError", "degreesOfFreedom", "limit")) {
                assertThat(row.get(figure)).as(figure).isEqualTo(size.get(figure));
            }
            assertThat(row.get("leastRandomisationP").asDouble()).as("one order cannot be drawn")
                    .isEqualTo(options.contains("--one-way") ? 1 : size.get("leastRandomisationP").asDouble());
        });
    }

    @Test
    void thePrintedFiguresAreThoseThatSizePrints() {
        List<String> rows = run("search" + SCATTER + "--hours 8").succeeded().out().lines().filter(line -> ROW.matcher(line).matches()).toList();

        assertThat(rows).hasSizeGreaterThan(8).allSatisfy(line -> {
            Matcher row = ROW.matcher(line);
            assertThat(row.matches()).isTrue();
            String size = size(row.group(1), row.group(2), row.group(3), "", false).words();
            assertThat(size).contains(" takes " + row.group(4).replace('\u202f', ' ') + ".").contains("the smallest gain found is " + row.group(5) + " hp.");
        });
    }

    private static Run size(String order, String pulls, String warmUps, String options, boolean json) {
        String kept = options.replaceAll("--(hours|warm-ups) \\S+|--any-first|--one-way", "");
        return run("size --sequence " + order + " --pulls " + pulls + " --warm-ups " + warmUps + " --set-up 30" + SCATTER + kept
                + (json ? " --json" : ""));
    }

    @Test
    void theTableFitsAPageAndSaysWhatEachStepBuys() {
        Run run = run("search" + SCATTER + "--hours 10 --money 2500 --per-hour 120 --per-pull 8 --per-swap 40 --set-up-cost 25");

        assertThat(run.succeeded().out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(run.words()).contains("What each step up buys:", "1 → 2", "for 1 more pull an install", "for 1 more install",
                "the gain asked for, 3 hp, is found with that chance", "cost: hours × 120 + pulls, warm-ups too, × 8 + swaps × 40 + 25;");
    }

    @Test
    void hopelessDaysAreFoldedToOneSentence() {
        Run text = run("search" + SCATTER + "--hours 6");
        JsonNode json = run("search" + SCATTER + "--hours 6 --json").json();

        List<JsonNode> hopeless = new ArrayList<>();
        json.get("front").forEach(row -> {
            boolean hope = row.get("power").asDouble() >= 0.2 && row.get("detectableGain").asDouble() <= 9;
            assertThat(row.get("hopeless").asBoolean()).isEqualTo(!hope);
            if (!hope) {
                hopeless.add(row);
            }
        });
        assertThat(hopeless).hasSize(3);
        assertThat(text.words()).contains("3 shorter days are hopeless and not listed: each would find the 3 hp asked for with a chance below 20 %; "
                + "all could find nothing below 9 hp, 3 times the gain asked for.");
        assertThat(text.out().lines().map(ROW::matcher).filter(Matcher::matches)).isNotEmpty()
                .allMatch(row -> Double.parseDouble(row.group(5)) <= 9);
        assertThat(json.get("warnings").get(0).asText()).startsWith("3 shorter days");
        assertThat(run("search" + SCATTER + "--hours 2.5").words()).contains("All days are hopeless, and only the best is listed", " ABA ");
        assertThat(run("search" + SCATTER + "--hours 6 --refit-df 60 --max-installs 4 --pulls 8-9").words()).doesNotContain("hopeless");
    }

    @Test
    void cautionsStandBesideTheirRowsAndAsCodes() {
        String line = "search" + SCATTER + "--hours 6 --one-way --refit-df 8 --drift linear";
        Run text = run(line);
        JsonNode json = run(line + " --json").json();

        assertThat(text.out()).containsPattern("(?m)^ 1  AB .* abc$").containsPattern("(?m)^ 2  AAB .* abd$");
        assertThat(text.words()).contains("mind a: no part comes back", "mind b: B is strapped down once", "mind c: only the pulls within",
                "mind d: a drift that bends");
        assertThat(json.get("front").get(0).get("cautions")).extracting(JsonNode::asText)
                .containsExactly("no-return-to-a", "single-b-one-way", "drift-told-by-pulls-alone");
        assertThat(json.get("cautions")).extracting(caution -> caution.get("code").asText())
                .containsExactly("no-return-to-a", "single-b-one-way", "drift-told-by-pulls-alone", "curvature-left");
    }

    @Test
    void breaksCostHoursAndWhatIsLeftOutIsSaid() {
        String plain = run("search" + SCATTER + "--hours 6").words();
        String broken = run("search" + SCATTER + "--hours 6 --start 9:00 --break 10:00+60").words();

        assertThat(plain).containsPattern("ABBA +2 +2 +2 h 50 min").contains("Every day is one session, looked at once", "--looks of:3,5",
                "Warm-up pulls are not traded against heat", "`fairpull soak`");
        // the break falls into the first swap, which is taken up again after it: an hour more
        assertThat(broken).containsPattern("ABBA +2 +2 +3 h 50 min").contains("its breaks kept and counted in its length");
        run("search" + SCATTER + "--hours 6 --break 10:00+60").refused(2, "give --start too");
        run("search" + SCATTER + "--hours 6 --start 9:00 --break 8:00+60").refused(2, "starts before the day does");
        run("search" + SCATTER + "--hours 6 --start 9:00|10:00").refused(2, "such as 9:00");
    }

    /** By hand: B starts at 10:05, 11:25 and 12:05 + …, on average 100 s before A; equally spaced positions would prefer ABBAAB, 28 min late. */
    @Test
    void ofOrdersAsGoodTheOneWithTheLeastDriftOnTheRealClockIsKept() {
        JsonNode front = run("search" + SCATTER + "--hours 6 --start 9:00 --break 12:30+45 --json").json().get("front");

        assertThat(front).filteredOn(row -> row.get("sequence").asText().length() == 6 && row.get("pulls").asInt() == 2).hasSize(1)
                .allSatisfy(row -> {
                    assertThat(row.get("sequence").asText()).isEqualTo("ABABBA");
                    assertThat(row.get("linearDriftLeft").asDouble()).isCloseTo(-1 / 36.0, within(1e-9));
                });
    }

    @Test
    void allThatIsMissingIsAskedForInOneLine() {
        run("search").refused(2, "--hours, --gain, --pull-scatter and --refit-scatter: are missing; add them, such as --hours 6 --gain 3 "
                + "--pull-scatter 1.2 --refit-scatter 0.6");
        run("size --sequence ABA --gain 3 --pull-scatter 1").refused(2, "--refit-scatter: is missing; add it, such as --refit-scatter 0.6");
        run("prove --sequence ABA --gain 3").refused(2, "--pull-scatter and --refit-scatter: are missing");
        run("search --hours 6 --gain 3 --pull-scatter 1.2 --refit-scatter 0").refused(2, "is never 0", "half the pull scatter");
    }

    @Test
    void aGainOutOfReachIsSaid() {
        assertThat(run("search" + SCATTER + "--hours 3").words()).contains("No day within the limits finds the gain asked for",
                "each by itself: more hours; a longer record of refit scatter (--refit-df).").doesNotContain("more pulls per", "out of reach");
        assertThat(run("search --hours 30 --pull-scatter 5 --refit-scatter 5 --refit-df inf --gain 0.3").words())
                .contains("The gain asked for is out of reach at this scatter: 10 installs with pulls without end")
                .doesNotContain("hours would", "more hours", "record of refit scatter (");
        assertThat(run("search" + SCATTER + "--hours 9 --money 500 --per-hour 120 --max-installs 4").words())
                .contains("No day within the limits finds", "more money").doesNotContain("more hours");
    }

    @Test
    void aPartThatCannotComeOffIsToldWhatIsLost() {
        Run run = run("search" + SCATTER + "--hours 6 --one-way");

        assertThat(run.words()).contains("no return to A", "--refit-df");
        assertThat(run.out().lines().map(ROW::matcher).filter(Matcher::matches)).isNotEmpty().noneMatch(row -> row.group(1).contains("BA"));
        assertThat(run("search" + SCATTER + "--hours 6 --one-way --refit-df 8").words())
                .contains("the record of refit scatter must stand for it", " AB ");
    }

    @Test
    void aPartThatCannotComeOffLeavesNothingToDrawAndNoRecordThatIsNotThere() {
        String line = "search" + SCATTER + "--hours 6 --one-way --max-installs 3";
        Run without = run(line);
        Run with = run(line + " --refit-df 8");

        assertThat(without.out()).containsPattern("(?m)^ 1  A[AB]B .* none +[a-d]+$");
        assertThat(without.words()).contains("there is one order only and nothing to draw", "only the scatter of the A installs stands for it")
                .doesNotContain("the record of refit scatter stands for it");
        assertThat(with.words()).contains("the record of refit scatter stands for it").doesNotContain("scatter of the A installs");
        assertThat(run("search" + SCATTER + "--hours 6").words()).contains("if the order is drawn").doesNotContain("nothing to draw");
    }

    @Test
    void moneyLimitsAndIsReckonedExactly() {
        JsonNode front = run("search" + SCATTER + "--hours 10 --money 600 --per-hour 90 --per-pull 2 --per-swap 15 --set-up-cost 10 --json").json()
                .get("front");

        assertThat(front).isNotEmpty().allSatisfy(row -> {
            int installs = row.get("sequence").asText().length();
            int pulls = row.get("pulls").asInt() + row.get("warmUps").asInt();
            double minutes = 30 + installs * pulls * 5 + (installs - 1) * 20;
            assertThat(row.get("minutes").asDouble()).isEqualTo(minutes);
            assertThat(row.get("cost").asDouble()).isEqualTo(minutes / 60 * 90 + installs * pulls * 2 + (installs - 1) * 15 + 10).isLessThanOrEqualTo(600);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"--hours 0.5; shorter than one install, which takes 50 min",
        "--hours 1; the shortest allowed day that can be judged takes 2 h 10 min", "--hours 6kg; no unit of time", "--hours six; expected hours",
        "--hours -3; more than 0 hours", "--hours 6 --money 900; --money: a limit of money needs a cost",
        "--hours 6 --money 10 --per-hour 100; the cheapest costs 217", "--hours 6 --first-a --any-first; contradicts --first-a",
        "--hours 6 --one-way --counterbalanced; contradicts --one-way", "--hours 6 --one-way --any-first; contradicts --one-way",
        "--hours 6 --pulls 10-2; ends before it begins", "--hours 6 --pulls two; such as 2-10",
        "--hours 6 --max-swaps 1 --counterbalanced; no order of up to 10 installs satisfies them all", "--hours 6 --max-installs 2; --refit-df",
        "--hours 6 --max-installs 11; between 2 and 10", "--hours 6 --max-swaps 0; --max-swaps", "--hours 6 --per-pull -1; --per-pull",
        "--hours 6 --interval 0; --interval"})
    void limitsThatCannotBeAreAnsweredInOneLine(String options, String said) {
        run("search" + SCATTER + options).refused(2, said);
    }

    private static Run run(String line) {
        List<Object> words = new ArrayList<>(List.of(line.strip().split(" +")));
        return Run.of(words.toArray());
    }
}

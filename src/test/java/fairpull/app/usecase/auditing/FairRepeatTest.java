package fairpull.app.usecase.auditing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.app.usecase.planning.StartingPlan;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.Repeat;
import fairpull.domain.audit.Repeat.Outcome;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Plan;
import fairpull.engine.audit.Audit;
import fairpull.engine.planning.PlanSizing;
import fairpull.engine.planning.Sizing;
import fairpull.io.json.PublicationJson;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fair repeat of publications that were made up for it. */
class FairRepeatTest {
    private static final String POWER = "\"name\": \"peak power\", \"before\": \"200.0 hp\", \"after\": \"210.0 hp\"";

    @Test
    void aLargeGainTakesTheShortestDayThatFindsIt() {
        Repeat repeat = repeat(POWER, "", "");
        Plan plan = repeat.plan().orElseThrow();

        assertThat(repeat.outcome()).isEqualTo(Outcome.FOUND);
        assertThat(repeat.gain()).isCloseTo(10, within(1e-9));
        assertThat(plan.sequence().letters()).isEqualTo(repeat.best().orElseThrow().order());
        assertThat(plan.question().worthwhileGainSi().orElseThrow()).isCloseTo(10 * 745.69987, within(1e-2));
        assertThat(plan.question().expectedLevelSi().orElseThrow()).isCloseTo(200 * 745.69987, within(1e-1));
        assertThat(plan.rig().leansOnAGuess()).as("judged by its own data").isFalse();
        assertThat(Sizing.size(PlanSizing.question(plan).orElseThrow()).power().orElseThrow()).isGreaterThanOrEqualTo(0.8);
        assertThat(repeat.recorded().orElseThrow().minutes()).isLessThan(repeat.best().orElseThrow().minutes());
    }

    /** The front of a search holds the shortest day of each gain: none of those before the one taken finds it. */
    @Test
    void noShorterDayFindsIt() {
        Repeat repeat = repeat(POWER, "", "");
        Plan plan = repeat.plan().orElseThrow();
        double minutes = repeat.best().orElseThrow().minutes();

        for (String order : List.of("ABA", "ABBA", "ABABA", "ABBABBA", "ABBAABBA")) {
            for (int pulls = 3; pulls <= 8; pulls++) {
                Plan other = plan.with(StartingPlan.refilled(plan.sequence(), order, pulls, 2));
                var seen = Sizing.figures(PlanSizing.question(other).orElseThrow());
                assertThat(seen.minutes() < minutes && seen.detectableGain().orElse(99) <= repeat.gain()).as(order + pulls).isFalse();
            }
        }
    }

    /** 0.7 % and 1.0 % at 200 hp: a single day finds some 4 hp; three days find 3 hp, and nothing within reason finds half a percent. */
    @Test
    void smallGainsTakeDaysOrAreOutOfReach() {
        Repeat days = repeat(POWER, "", "\"gain\": \"3 hp\",");
        Repeat never = repeat(POWER, "", "\"gain\": \"1 hp\",");

        assertThat(days.outcome()).isEqualTo(Outcome.FOUND);
        assertThat(days.best().orElseThrow().days()).isGreaterThan(1);
        assertThat(days.oneDayFinds().orElseThrow()).isGreaterThan(3);
        assertThat(never.outcome()).isEqualTo(Outcome.OUT_OF_REACH);
        assertThat(never.best().orElseThrow().detectableGain()).isGreaterThan(1);
        assertThat(never.recorded()).isEmpty();
    }

    /** The order ends where it began, the drift is in the model, and no day leans: Σ position of B is that of A. */
    @ParameterizedTest
    @CsvSource({"10 hp", "6 hp", "4.6 hp", "4 hp", "3 hp", "2.7 hp"})
    void theOrderReturnsToAAndTheDriftIsModelled(String gain) {
        Repeat repeat = repeat(POWER, "", "\"gain\": \"" + gain + "\",");
        Plan plan = repeat.plan().orElseThrow();

        assertThat(repeat.outcome()).isEqualTo(Outcome.FOUND);
        assertThat(plan.analysis().drift()).isEqualTo(Drift.LINEAR);
        for (String day : repeat.best().orElseThrow().order().split("\\|")) {
            double middle = (day.length() - 1) / 2.0;
            assertThat(day).startsWith("A").endsWith("A");
            assertThat(IntStream.range(0, day.length()).filter(i -> day.charAt(i) == 'B').mapToDouble(i -> i - middle).sum()).isZero();
        }
    }

    @Test
    void whatIsNotSaidOfTheAirIsCorrectedAndWhatIsSaidIsKept() {
        String none = "\"correctionBefore\": \"none\", \"correctionAfter\": \"none\"";
        String mixed = "\"correctionBefore\": \"iso-1585\", \"correctionAfter\": \"sae-j607\"";
        String one = "\"correctionBefore\": \"iso-1585\", \"correctionAfter\": \"iso-1585\"";

        assertThat(correction("")).isEqualTo(Correction.SAE_J1349);
        assertThat(correction(mixed)).isEqualTo(Correction.SAE_J1349);
        assertThat(correction(one)).isEqualTo(Correction.ISO_1585);
        assertThat(correction(none)).isEqualTo(Correction.NONE);
        assertThat(repeat(POWER, "", "").plan().orElseThrow().remark()).contains("The correction is chosen here");
        assertThat(repeat(POWER, one, "").plan().orElseThrow().remark()).doesNotContain("chosen here");
        assertThat(repeat(POWER, "", "").plan().orElseThrow().checklist()).last().asString().startsWith("temperature, humidity and pressure");
    }

    private static Correction correction(String procedure) {
        return repeat(POWER, procedure, "").plan().orElseThrow().question().deciding().correction();
    }

    @Test
    void statedScatterTakesThePlaceOfTheGuess() {
        Repeat repeat = repeat(POWER, "\"scatter\": {\"pull\": {\"deviation\": \"0.3 %\"}, \"refit\": {\"deviation\": \"0.2 %\"}}", "\"gain\": \"2 hp\",");

        assertThat(repeat.outcome()).isEqualTo(Outcome.FOUND);
        assertThat(repeat.best().orElseThrow().days()).isEqualTo(1);
        assertThat(repeat.plan().orElseThrow().rig().refitScatter().orElseThrow().standardDeviationSi() / 745.69987)
                .isCloseTo(0.4, within(1e-6));
    }

    @Test
    void whatScattersNobodyKnowsHowOrShowsNoGainIsNotPlanned() {
        assertThat(repeat("\"name\": \"capacity\", \"before\": \"6.0 W·h\", \"after\": \"7.0 W·h\"", "", "").outcome())
                .isEqualTo(Outcome.NO_SCATTER);
        assertThat(repeat("\"name\": \"peak power\", \"before\": \"200 hp\", \"after\": \"199 hp\"", "", "").outcome())
                .isEqualTo(Outcome.NO_GAIN);
    }

    @ParameterizedTest
    @CsvSource({"peak power, 200 hp, peak power", "power, 200 hp, peak power", "torque at 3200 rpm, 300 N·m, torque at 3200 rpm",
        "mean power 3000–6500 rpm, 200 hp, mean power 3000-6500 rpm", "'power from 3,000 to 6,500 rpm', 200 hp, mean power 3000-6500 rpm",
        "power 6500-3000 rpm, 200 hp, power at 3000 rpm", "quarter mile, 14.2 s, quarter mile"})
    void theMeasureIsTheOneThatTheFigureNames(String name, String value, String measure) {
        Publication.Figure figure = publication("\"name\": \"" + name + "\", \"before\": \"" + value + "\", \"after\": \"" + value + "\"",
                "", "").figures().get(0);

        assertThat(RepeatMeasure.of(figure, Correction.NONE).name()).isEqualTo(measure);
    }

    private static Repeat repeat(String figure, String procedure, String claim) {
        return FairRepeat.of(Audit.of(publication(figure, procedure, claim), List.of()));
    }

    private static Publication publication(String figure, String procedure, String claim) {
        String name = figure.split("\"")[3];
        return PublicationJson.read("""
                {"publicationVersion": 1, "title": "t", "changed": "c", "figures": [{%s}], "procedure": {%s},
                 "claims": [{"words": "more", %s "figure": "%s"}]}
                """.formatted(figure, procedure, claim, name), "made up");
    }
}

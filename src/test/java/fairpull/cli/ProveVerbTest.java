package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import fairpull.app.task.Chunks;
import fairpull.app.task.Progress;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.plan.Part;
import fairpull.domain.proof.PlannedInstall;
import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.ProofQuestion.LookLevel;
import fairpull.domain.proof.Truth;
import fairpull.engine.proving.Proof;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code prove} from the words typed to the document printed. */
class ProveVerbTest {
    private static final Object[] SEQUENCE = {"prove", "--sequence", "ABABA", "--pulls", "5", "--pull-scatter", "1", "--refit-scatter", "1",
        "--gain", "3", "--json"};

    @TempDir
    private Path folder;

    /** Kenward–Roger in A/B/A/B/A with five pulls, refit scatter equal to pull scatter: 3.77 % in R (200,000 campaigns, ProofTest). */
    @Test
    void aSequenceInOwnData() {
        JsonNode found = Run.of(SEQUENCE).json();
        assertThat(found.get("campaigns").asInt()).isEqualTo(10_000);
        double error = found.get("errorRate").get("value").asDouble();
        assertThat(error).isCloseTo(0.0377, within(4 * Math.sqrt(0.0377 * 0.9623 / 10_000)));
        assertThat(found.get("errorRate").get("standardError").asDouble()).isCloseTo(Math.sqrt(error * (1 - error) / 1e4), within(1e-12));
        assertThat(found.get("coverage").get("value").asDouble()).isCloseTo(1 - error, within(1e-12));
        long all = 0;
        for (JsonNode count : found.get("withGain")) {
            all += count.asLong();
        }
        assertThat(all).isEqualTo(10_000);
        assertThat(found.get("warnings")).isEmpty();
    }

    @Test
    void theSameSeedGivesTheSameAnswerOnOneThreadAndOnTwo() {
        assertThat(Run.of(SEQUENCE).out()).isEqualTo(Run.of(SEQUENCE).out());
        List<PlannedInstall> installs = List.of(new PlannedInstall("day", "A1", Part.A, List.of(0.0, 5.0)),
                new PlannedInstall("day", "B1", Part.B, List.of(30.0, 35.0)), new PlannedInstall("day", "A2", Part.A, List.of(60.0, 65.0)));
        Proof proof = Proof.of(new ProofQuestion(installs, JudgeSettings.plain(), List.of(new LookLevel(3, 0.05)), Truth.plain(1, 1, 3),
                20_000, 9));
        ProofAnswer one = Chunks.run(proof.chunks(), proof::run, 1, Progress.none()).stream().reduce(ProofAnswer::plus).orElseThrow();
        ProofAnswer two = Chunks.run(proof.chunks(), proof::run, 2, Progress.none()).stream().reduce(ProofAnswer::plus).orElseThrow();
        assertThat(one).isEqualTo(two);
    }

    /** A plan's own figures, in its units: 1 % of 200 kW is 2 kW, and unequal pulls and looks are those of the plan. */
    @Test
    void aTestIsProvedAsItIsPlanned() {
        Path test = SmallTest.make(folder.resolve("t"), "ABABA", "--expected", "200kW", "--worthwhile", "6kW", "--pull-scatter", "1%",
                "--refit-scatter", "1kW", "--looks", "of:3,5", "--pulls", "5");
        JsonNode found = Run.of("prove", test, "--json").json();
        JsonNode typed = Run.of("prove", "--sequence", "ABABA", "--pulls", "5", "--pull-scatter", "2", "--refit-scatter", "1", "--gain", "6",
                "--looks", "of:3,5", "--json").json();
        assertThat(found).isEqualTo(typed);
        assertThat(found.get("looks")).hasSize(2);
        JsonNode other = Run.of("prove", test, "--refit-scatter", "4kW", "--gain", "2%", "--json").json();
        assertThat(other.get("power").get("gain").asDouble()).isCloseTo(4, within(1e-12));
        assertThat(other.get("power").get("value").asDouble()).isLessThan(found.get("power").get("value").asDouble());
    }

    @Test
    void lessIsBetterMirrorsMore() {
        JsonNode more = Run.of(SEQUENCE).json();
        JsonNode less = Run.of("prove", "--sequence", "ABABA", "--pulls", "5", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "3",
                "--better", "less", "--json").json();
        assertThat(less.get("power").get("value").asDouble()).isCloseTo(more.get("power").get("value").asDouble(), within(0.03));
        assertThat(less.get("errorRate")).isEqualTo(more.get("errorRate"));
    }

    @Test
    void unequalPullsNeedTheInstallMeansToAgree() {
        Path test = SmallTest.make(folder.resolve("t"), "ABA", "--worthwhile", "6kW", "--pull-scatter", "1kW", "--refit-scatter", "2kW",
                "--pulls", "10");
        String plan = SmallTest.read(test.resolve("plan.json"));
        int second = plan.indexOf("\"countedPulls\" : 10", plan.indexOf("\"countedPulls\" : 10") + 1);
        SmallTest.write(test.resolve("plan.json"), plan.substring(0, second) + "\"countedPulls\" : 2" + plan.substring(second + 19));
        JsonNode found = Run.of("prove", test, "--campaigns", "4000", "--json").json();
        // 12 % without the rule (10-2-10 at twice the pull scatter, statistics of the design), at most 5 % with it
        assertThat(found.get("errorRate").get("value").asDouble()).isLessThan(0.05 + 3 * Math.sqrt(0.05 * 0.95 / 4000));
    }

    @Test
    void saysWhatItDidInWords() {
        String text = Run.of("prove", "--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "3", "--campaigns",
                "1000", "--true-drift", "2/h", "--outliers", "2%:5", "--autocorrelation", "0.3", "--looks", "pocock:3,5").succeeded().out()
                .replaceAll("[\\s\u202f]+", " ");
        assertThat(text).contains("1,000 simulated campaigns of ABABA", "a drift of 2 an hour", "2 % of the pulls off by 5",
                "correlated by 0.3", "ended after 3 installs", "standard error of the simulation");
    }

    @Test
    void badUsageIsNamed() {
        Run.of("prove").refused(2, "TEST", "--sequence");
        Run.of("prove", "plans/electric-pump", "--sequence", "ABA").refused(2, "--sequence", "not both");
        Run.of("prove", "plans/electric-pump", "--pulls", "3").refused(2, "--pulls", "belongs to --sequence");
        Run.of("prove", "plans/electric-pump", "--true-drift", "2hp").refused(2, "--true-drift", "2hp/h");
        Run.of("prove", "plans/electric-pump", "--outliers", "5hp").refused(2, "--outliers", "2%:5hp");
        Run.of("prove", "plans/electric-pump", "--autocorrelation", "1.5").refused(2, "autocorrelation", "-1 and 1");
        Run.of("prove", "plans/electric-pump", "--campaigns", "0").refused(2, "--campaigns");
        Run.of("prove", "--sequence", "ABXBA", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "3").refused(2, "--sequence");
        Run.of("prove", "--sequence", "ABABA", "--pull-scatter", "1", "--refit-scatter", "1").refused(2, "--gain");
        Run.of("prove", "--sequence", "AB", "--pull-scatter", "1", "--refit-scatter", "1", "--gain", "3").succeeded();
        Run.of("prove", SmallTest.make(folder.resolve("t"), "ABA")).refused(2, "--pull-scatter", "plan names no");
        Run.of("prove", folder.resolve("nothing")).refused(3, "nothing");
    }
}

package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/** What `size` promises of a plan with looks, held against what simulated campaigns of it find. */
class LookPowerTest {
    private static final Object[] PLAN = {"--sequence", "ABABA", "--pulls", "5", "--pull-scatter", "1.2", "--refit-scatter", "0.6", "--gain",
        "3", "--looks", "pocock:3,5", "--json"};

    /** Chances add at most: whoever finds the gain finds it at one of the looks. */
    @Test
    void powerNeverPassesTheSumOfTheLooksChances() {
        var size = Run.of(with("size")).json();
        double sum = 0;
        for (var look : size.get("looks")) {
            sum += look.get("chance").asDouble();
        }

        assertThat(sum).isPositive();
        assertThat(size.get("power").asDouble()).isLessThanOrEqualTo(sum + 1e-12);
    }

    @Test
    @Disabled("pending: size knows looks through known scatter only; with own data it says 71 % here where campaigns find 57 %")
    void powerIsWhatSimulatedCampaignsFind() {
        double promised = Run.of(with("size")).json().get("power").asDouble();
        double found = Run.of(with("prove")).json().at("/power/value").asDouble();

        assertThat(promised).isCloseTo(found, within(0.02));
    }

    private static Object[] with(String verb) {
        Object[] words = new Object[PLAN.length + 1];
        words[0] = verb;
        System.arraycopy(PLAN, 0, words, 1, PLAN.length);
        return words;
    }
}

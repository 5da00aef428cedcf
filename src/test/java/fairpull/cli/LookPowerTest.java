package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What {@code size} promises of a plan with looks, held against campaigns that {@code prove} simulates pull by pull and gives to the judge.
 * The tolerance is four standard errors of both simulations together.
 */
class LookPowerTest {
    private static final int CAMPAIGNS = 20_000;
    /** Of a chance in {@code size}: 10,000 pairs of campaigns. */
    private static final double PAIRS = 10_000;

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "own data; --sequence ABABA --gain 3 --looks pocock:3,5",
        "own data; --sequence ABABA --gain 3 --looks of:3,5",
        "own data; --sequence ABABABABA --gain 2 --looks pocock:5,7,9",
        "own data; --sequence ABABABABA --gain 1.8 --looks of:3,5,9 --sides one",
        "own data, drift; --sequence ABABABA --gain 3 --looks pocock:5,7 --drift linear",
        "own data, sessions; --sequence ABA|ABA|ABA --gain 2.5 --looks pocock:6,9",
        "own data, single pulls; --sequence ABABABA --gain 4 --looks pocock:5,7 --pulls 1",
        "record; --sequence ABABA --gain 2 --looks pocock:3,5 --refit-df 4",
        "record; --sequence ABABA --gain 2 --looks of:3,5 --refit-df 11",
        "both records; --sequence ABABABA --gain 1.5 --looks pocock:3,5,7 --refit-df 20 --pull-df 40",
        "record, drift; --sequence ABABA --gain 2 --looks pocock:3,5 --refit-df 11 --drift linear --campaigns 4000",
        "record, single pulls; --sequence ABABA --gain 3.5 --looks pocock:3,5 --refit-df 11 --pulls 1 --campaigns 4000",
        "known; --sequence ABABA --gain 2 --looks pocock:3,5 --refit-df 1e9 --pull-df 1e9"})
    void powerIsWhatSimulatedCampaignsFind(String kind, String plan) {
        double promised = size(plan).get("power").asDouble();
        JsonNode found = prove(plan).at("/power");

        double variance = promised * (1 - promised);
        double error = Math.sqrt(variance / PAIRS + variance / (plan.contains("--campaigns") ? 4000 : CAMPAIGNS));
        assertThat(promised).as(kind).isBetween(0.05, 0.99).isCloseTo(found.get("value").asDouble(), within(4 * error));
    }

    /** Chances add at most: whoever finds the gain finds it at one of the looks. */
    @Test
    void powerNeverPassesTheSumOfTheLooksChances() {
        JsonNode size = size("--sequence ABABABA --gain 2.5 --looks pocock:3,5,7");
        double sum = 0;
        for (JsonNode look : size.get("looks")) {
            sum += look.get("chance").asDouble();
        }

        assertThat(size.get("power").asDouble()).isPositive().isLessThanOrEqualTo(sum + 1e-12);
    }

    /** The gain that is found with the power wanted, and the pulls and installs that reach it, do so when they are planned. */
    @Test
    void whatIsNeededReachesThePowerWanted() {
        String looks = " --looks pocock:3,5 --refit-df 11";
        JsonNode size = size("--sequence ABABA --gain 1.9" + looks);
        double detectable = size.get("detectableGain").asDouble();
        int pulls = size.get("pullsNeeded").asInt();
        int installs = size.get("installsNeeded").asInt();

        assertThat(size("--sequence ABABA --gain " + detectable + looks).get("power").asDouble()).isCloseTo(0.8, within(1e-3));
        assertThat(power("--sequence ABABA --gain 1.9 --pulls " + pulls + looks)).isGreaterThanOrEqualTo(0.8);
        assertThat(power("--sequence ABABA --gain 1.9 --pulls " + (pulls - 1) + looks)).isLessThan(0.8);
        assertThat(power("--sequence " + "AB".repeat(installs).substring(0, installs) + " --gain 1.9 --looks pocock:3,5," + installs
                + " --refit-df 11")).isGreaterThanOrEqualTo(0.8);
        assertThat(size.get("limit").asDouble()).isLessThan(1.9);
        assertThat(power("--sequence ABABA --gain " + size.get("limit").asDouble() + " --pulls 1000" + looks)).isCloseTo(0.8, within(0.02));
    }

    private static double power(String plan) {
        return size(plan).get("power").asDouble();
    }

    private static JsonNode size(String plan) {
        return Run.of(words("size", plan.replaceAll(" --campaigns \\d+", ""))).json();
    }

    private static JsonNode prove(String plan) {
        return Run.of(words("prove", plan + (plan.contains("--campaigns") ? "" : " --campaigns " + CAMPAIGNS))).json();
    }

    private static Object[] words(String verb, String plan) {
        List<Object> words = new ArrayList<>(List.of(verb, "--pull-scatter", "1.2", "--refit-scatter", "0.6", "--json"));
        words.addAll(List.of(plan.split(" ")));
        if (!plan.contains("--pulls")) {
            words.addAll(List.of("--pulls", "5"));
        }
        return words.toArray();
    }
}

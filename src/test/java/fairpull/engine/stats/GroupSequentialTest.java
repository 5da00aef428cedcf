package fairpull.engine.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Sources and tolerances: published/group-sequential/README.md. */
class GroupSequentialTest {
    private static final double ALPHA = 0.05;

    @Test
    void boundsOfReboussinAndOthers() {
        Published table = new Published("group-sequential/lan-demets-of.csv");
        double[] fractions = equallySpaced(5);
        double[] bounds = GroupSequential.bounds(fractions, ALPHA, true, ErrorSpending.OBRIEN_FLEMING);
        double[] exits = GroupSequential.exits(fractions, bounds, true, 0);
        double cumulative = 0;
        for (int k = 0; k < 5; k++) {
            cumulative += exits[k];
            assertThat(bounds[k]).isCloseTo(table.numbers("bound")[k], within(1.5e-4));
            double printed = table.numbers("cumulativeExit")[k];
            assertThat(cumulative).isCloseTo(printed, within(1e-4 * Math.pow(10, Math.floor(Math.log10(printed)))));
        }
    }

    @Test
    void boundsOfBothKindsToManyDigits() {
        Published table = new Published("group-sequential/spending.csv");
        for (int row = 0; row < table.words("kind").size(); row++) {
            double[] printed = Arrays.stream(table.words("bounds").get(row).split(" ")).mapToDouble(Double::parseDouble).toArray();
            double[] bounds = GroupSequential.bounds(equallySpaced(printed.length), ALPHA, true,
                    ErrorSpending.valueOf(table.words("kind").get(row)));
            for (int k = 0; k < printed.length; k++) {
                assertThat(bounds[k]).as("%s look %d", table.words("kind").get(row), k + 1).isCloseTo(printed[k], within(2e-5));
            }
        }
    }

    /** Equal bounds, and bounds C·√(K/k), with the published constants, keep to 5 % up to the digits printed. */
    @Test
    void classicalConstants() {
        Published table = new Published("group-sequential/classical.csv");
        for (int row = 0; row < 9; row++) {
            int looks = (int) table.numbers("looks")[row];
            double[] flat = new double[looks];
            Arrays.fill(flat, 1);
            double[] falling = new double[looks];
            Arrays.setAll(falling, k -> Math.sqrt(looks / (k + 1.0)));
            assertThat(constant(looks, flat)).as("Pocock %d", looks).isCloseTo(table.numbers("pocock")[row], within(0.5001e-3));
            assertThat(constant(looks, falling)).as("OBF %d", looks).isCloseTo(table.numbers("obrienFleming")[row], within(0.5001e-3));
        }
    }

    private static double constant(int looks, double[] shape) {
        return Roots.between(c -> total(GroupSequential.exits(equallySpaced(looks), Arrays.stream(shape).map(s -> c * s).toArray(), true,
                0)) - ALPHA, 1.9, 3, 1e-11);
    }

    /** Another integration in another language: computed/group-sequential-scipy. */
    @Test
    void agreesWithAnIndependentIntegration() throws IOException {
        JsonNode answers = new ObjectMapper().readTree(Path.of("src/test/resources/computed/group-sequential-scipy/bounds.json").toFile());
        assertThat(answers.get("cases")).hasSize(20);
        for (JsonNode one : answers.get("cases")) {
            double alpha = one.get("alpha").asDouble();
            double[] fractions = numbers(one.get("fractions"));
            double[] bounds = GroupSequential.bounds(fractions, alpha, true, ErrorSpending.valueOf(one.get("kind").asText()));
            assertThat(bounds).as("%s", one).containsExactly(numbers(one.get("bounds")), within(1e-9));
            assertThat(GroupSequential.exits(fractions, bounds, true, 3)).containsExactly(numbers(one.get("exitsAtDrift3")), within(1e-9));
        }
        for (int looks = 2; looks <= 10; looks++) {
            double[] flat = new double[looks];
            Arrays.fill(flat, 1);
            assertThat(constant(looks, flat)).isCloseTo(answers.get("pocock").get("" + looks).asDouble(), within(1e-9));
        }
    }

    private static double[] numbers(JsonNode array) {
        double[] numbers = new double[array.size()];
        Arrays.setAll(numbers, i -> array.get(i).asDouble());
        return numbers;
    }

    @Test
    void oneLookIsThePlainTest() {
        double[] once = {1};
        assertThat(GroupSequential.bounds(once, ALPHA, true, ErrorSpending.POCOCK)[0]).isCloseTo(1.959963984540054, within(1e-12));
        assertThat(GroupSequential.bounds(once, ALPHA, false, ErrorSpending.OBRIEN_FLEMING)[0]).isCloseTo(1.6448536269514722, within(1e-12));
    }

    /** Whatever the places of the looks, one- or two-sided: the whole error rate is spent, no more and no less. */
    @Test
    void unequalLooksSpendAllOfTheError() {
        double[] fractions = {0.1, 0.15, 0.6, 0.97, 1};
        for (ErrorSpending spending : ErrorSpending.values()) {
            for (boolean twoSided : new boolean[] {true, false}) {
                double[] bounds = GroupSequential.bounds(fractions, ALPHA, twoSided, spending);
                double[] exits = GroupSequential.exits(fractions, bounds, twoSided, 0);
                double spent = 0;
                for (int k = 0; k < fractions.length; k++) {
                    spent += exits[k];
                    double tails = twoSided ? 2 : 1;
                    assertThat(spent).isCloseTo(tails * spending.spent(ALPHA / tails, fractions[k]), within(1e-9));
                }
            }
        }
    }

    /** Outside the project: 200,000 random walks, within four standard errors. */
    @Test
    void crossingChancesAgreeWithRandomWalks() {
        double[] fractions = {0.3, 0.5, 1};
        double[] bounds = GroupSequential.bounds(fractions, ALPHA, true, ErrorSpending.POCOCK);
        double drift = 2.5;
        double[] exits = GroupSequential.exits(fractions, bounds, true, drift);
        int walks = 200_000;
        int[] stopped = new int[3];
        Deviates deviates = new Deviates(7);
        for (int walk = 0; walk < walks; walk++) {
            double s = 0;
            double before = 0;
            for (int k = 0; k < 3; k++) {
                s += drift * (fractions[k] - before) + Math.sqrt(fractions[k] - before) * deviates.normal();
                before = fractions[k];
                if (Math.abs(s) > bounds[k] * Math.sqrt(fractions[k])) {
                    stopped[k]++;
                    break;
                }
            }
        }
        for (int k = 0; k < 3; k++) {
            assertThat((double) stopped[k] / walks).isCloseTo(exits[k], within(4 * Math.sqrt(exits[k] * (1 - exits[k]) / walks)));
        }
    }

    @Test
    void refusesLooksThatDoNotRise() {
        assertThatThrownBy(() -> GroupSequential.bounds(new double[] {0.5, 0.5}, ALPHA, true, ErrorSpending.POCOCK))
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> GroupSequential.bounds(new double[] {1e-6, 1}, ALPHA, true, ErrorSpending.OBRIEN_FLEMING))
                .hasMessageContaining("no error left");
    }

    private static double total(double[] values) {
        return Arrays.stream(values).sum();
    }

    private static double[] equallySpaced(int looks) {
        double[] fractions = new double[looks];
        Arrays.setAll(fractions, k -> (k + 1.0) / looks);
        return fractions;
    }
}

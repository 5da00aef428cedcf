package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.Assumed;
import fairpull.domain.audit.Assumed.Shifts;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.TypeErrors;
import fairpull.engine.stats.Deviates;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chances and errors of a published pair at 200 with pulls that scatter by 1: against closed forms and a simulation. */
class PublishedDifferenceTest {
    private static final double LEVEL = 200;
    private static final double ONE = 1.959964;
    private static final Quote SINGLE = Quote.single();

    private static PublishedDifference difference(double size, Quote before, Quote after, double freedom) {
        ScatterShares scatter = new ScatterShares(1 / LEVEL, 0, 0,
                new ScatterShares.Freedom(freedom, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
        return new PublishedDifference(size, LEVEL, 0, new Assumed(before, after, scatter, 0, 0, Shifts.NONE, ONE));
    }

    /** One degree of freedom is Cauchy's distribution: P(|T| ≥ t) = 1 − 2·atan(t)/π; two have 1 − t/√(2 + t²). */
    @ParameterizedTest
    @CsvSource({"3", "9", "12", "40", "1000"})
    void chanceKeepsItsDigitsFarOutWhereFewDegreesOfFreedomStandBehindTheScatter(double errors) {
        double size = errors * Math.sqrt(2);

        assertThat(difference(size, SINGLE, SINGLE, 1).chanceAlone()).isCloseTo(1 - 2 * Math.atan(errors) / Math.PI, within(1e-9));
        assertThat(difference(size, SINGLE, SINGLE, 2).chanceAlone()).isCloseTo(1 - errors / Math.sqrt(2 + errors * errors), within(1e-9));
    }

    /** Of a normal difference the closed form of the paper. */
    @ParameterizedTest
    @CsvSource({"0.5", "1", "2", "4", "20", "300"})
    void errorsOfMeansAreThoseOfTheClosedForm(double gain) {
        TypeErrors found = difference(0, SINGLE, SINGLE, Double.POSITIVE_INFINITY).errorsAt(gain);
        TypeErrors closed = Exaggeration.at(gain, Math.sqrt(2), 0.05);

        assertThat(found.power()).isCloseTo(closed.power(), within(1e-6));
        assertThat(found.wrongSign()).isCloseTo(closed.wrongSign(), within(1e-6));
        assertThat(found.exaggeration()).isCloseTo(closed.exaggeration(), within(1e-5));
    }

    /** Seed 20261, 400,000 publications: what comes out is what an unchanged pair passes in 5 % of cases. */
    @ParameterizedTest
    @CsvSource({"BEST, 5, SINGLE, 1", "SINGLE, 1, BEST, 5", "MEAN, 5, BEST, 5"})
    void errorsOfTheBestOfSeveralAreThoseOfSimulatedPublications(Quote.Kind before, int pullsBefore, Quote.Kind after, int pullsAfter) {
        Quote one = new Quote(before, pullsBefore);
        Quote other = new Quote(after, pullsAfter);
        double gain = 1.4;
        TypeErrors found = difference(0, one, other, Double.POSITIVE_INFINITY).errorsAt(gain);
        double[] unchanged = new double[400_000];
        Deviates deviates = new Deviates(20261);
        for (int k = 0; k < unchanged.length; k++) {
            unchanged[k] = quoted(other, deviates) - quoted(one, deviates);
        }
        double[] sizes = Arrays.stream(unchanged).map(Math::abs).sorted().toArray();
        double critical = sizes[(int) (0.95 * sizes.length)];
        double[] out = Arrays.stream(unchanged).map(d -> d + gain).filter(d -> Math.abs(d) >= critical).toArray();

        assertThat(found.power()).isCloseTo((double) out.length / unchanged.length, within(0.004));
        assertThat(found.exaggeration()).isCloseTo(Arrays.stream(out).map(Math::abs).average().orElseThrow() / gain,
                within(0.02));
    }

    private static double quoted(Quote quote, Deviates deviates) {
        double best = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int pull = 0; pull < quote.pulls(); pull++) {
            double value = deviates.normal();
            best = Math.max(best, value);
            sum += value;
        }
        return quote.isPicked() ? best : sum / quote.pulls();
    }

    /** Student's t of 8 degrees of freedom through its own tail: beyond the critical value c − θ/σ on one side, c + θ/σ on the other. */
    @Test
    void fewDegreesOfFreedomLetLessComeOut() {
        TypeErrors known = difference(0, SINGLE, SINGLE, Double.POSITIVE_INFINITY).errorsAt(2);
        TypeErrors few = difference(0, SINGLE, SINGLE, 8).errorsAt(2);

        // R: d <- 2/sqrt(2); q <- qt(0.975, 8); 1 - pt(q - d, 8) + pt(-q - d, 8) and the same with pnorm
        assertThat(few.power()).isCloseTo(0.2022, within(1e-4));
        assertThat(known.power()).isCloseTo(0.2930, within(1e-4));
        assertThat(few.exaggeration()).isGreaterThan(known.exaggeration());
    }
}

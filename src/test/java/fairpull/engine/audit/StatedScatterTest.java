package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.BudgetTerm;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.RunOrder;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterRange;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.audit.StatedScatter;
import fairpull.domain.plan.Correction;
import fairpull.domain.unit.Units;
import fairpull.engine.stats.Normal;
import fairpull.engine.stats.StudentT;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stated scatter takes the place of the assumed range, with Student's t for its degrees of freedom. */
class StatedScatterTest {
    private static final double LEVEL = 200;
    private static final Printed BEFORE = Printed.parse("200.0 hp").orElseThrow();
    private static final double ONE = 1.959964;

    /** Quantiles of t: 2.776 with 4 degrees of freedom, 2.228 with 10 (any printed table). */
    @ParameterizedTest
    @CsvSource({"4, 2.776", "10, 2.228"})
    void theIntervalIsThatOfStudentsT(double freedom, double quantile) {
        PublishedDifference difference = single(new ScatterShares(0.007, 0, 0,
                new ScatterShares.Freedom(freedom, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)));
        double standardError = 1.4 * Math.sqrt(2);

        assertThat(difference.degreesOfFreedom()).isCloseTo(freedom, within(1e-9));
        assertThat(difference.interval().low()).isCloseTo(10 - quantile * standardError, within(0.0005 * standardError));
        assertThat(difference.interval().high()).isCloseTo(10 + quantile * standardError, within(0.0005 * standardError));
        assertThat(difference.chanceAlone()).isCloseTo(StudentT.bothTails(10 / standardError, freedom), within(1e-9));
        assertThat(difference.tippingFactor()).isCloseTo(10 / (quantile * standardError), within(1e-3));
    }

    @Test
    void aSingleDegreeOfFreedomStillGivesAnInterval() {
        PublishedDifference difference = single(new ScatterShares(0.007, 0, 0,
                new ScatterShares.Freedom(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)));

        assertThat(difference.interval().high() - 10).isCloseTo(12.706 * 1.4 * Math.sqrt(2), within(0.01));
    }

    /** Satterthwaite: two equal variances with 4 and infinitely many degrees of freedom have (1 + 1)² ÷ (1/4) = 16. */
    @Test
    void layersShareTheirDegreesOfFreedom() {
        Procedure unstrapped = procedure(Quote.single(), Quote.single());
        Procedure strapped = unstrapped.with(unstrapped.keeping().withStrapDown(Optional.of(Sameness.DIFFERENT)));
        ScatterShares shares = new ScatterShares(0.007, 0.007, 0, new ScatterShares.Freedom(4, Double.POSITIVE_INFINITY, 1));

        assertThat(new PublishedDifference(10, LEVEL, 0, Assumptions.ordinary(strapped, shares, ONE)).degreesOfFreedom())
                .isCloseTo(16, within(1e-9));
    }

    @Test
    void whatWasStatedReplacesItsLayerAndNoOther() {
        StatedScatter stated = new StatedScatter(layer("1 hp", 12), Optional.empty(), Optional.empty());
        ScatterRange range = PlausibleScatter.of(Optional.of(stated), BEFORE);

        assertThat(range.least().pull()).isEqualTo(range.most().pull()).isCloseTo(0.005, within(1e-12));
        assertThat(range.most().freedom().pull()).isEqualTo(12);
        assertThat(range.most().refit()).isEqualTo(ScatterShares.MOST.refit());
        assertThat(PlausibleScatter.of(Optional.of(stated), Printed.parse("300 N·m").orElseThrow())).isEqualTo(ScatterRange.ASSUMED);
    }

    /** Means over two installs of A and one of B carry 1/2 + 1 of the refit variance; the best of five adds 1.16296 scatters. */
    @Test
    void theBudgetFollowsOrderAndQuotes() {
        Quote mean = new Quote(Quote.Kind.MEAN, 4);
        Procedure returned = procedure(mean, mean).with(Returning.NOT_DISCLOSED.withOrder(Optional.of(new RunOrder("ABA"))));
        PublishedDifference worst = new PublishedDifference(10, LEVEL, 0.05, Assumptions.worst(returned, ScatterShares.MOST, ONE));
        PublishedDifference best = new PublishedDifference(10, LEVEL, 0.05,
                Assumptions.ordinary(procedure(Quote.single(), new Quote(Quote.Kind.BEST, 5)), ScatterShares.ORDINARY, ONE));

        assertThat(worst.deviation(BudgetTerm.Kind.REFIT)).isCloseTo(4 * Math.sqrt(1.5), within(1e-9));
        assertThat(worst.deviation(BudgetTerm.Kind.PULLS)).isCloseTo(3.2 * Math.sqrt(0.5), within(1e-9));
        assertThat(worst.deviation(BudgetTerm.Kind.ROUNDING)).isCloseTo(0.05 * Math.sqrt(2.0 / 3), within(1e-9));
        assertThat(best.deviation(BudgetTerm.Kind.PICKED_BEST)).isCloseTo(1.16296 * 1.4, within(1e-4));
        assertThat(best.deviation(BudgetTerm.Kind.PICKED_SPEED)).isCloseTo(0, within(1e-5));
    }

    /**
     * An unchanged car in the order A/B/A, means of four pulls a side, pulls and refits scattering as they truly do, while what is stated of
     * them was estimated with 6 and 4 degrees of freedom: how often a gain is graded “shown”. Seed 20262, 1500 publications.
     */
    @Test
    void anUnchangedCarIsHardlyEverShownToHaveGainedByAStatedScatter() {
        SplittableRandom random = new SplittableRandom(20262);
        Quote mean = new Quote(Quote.Kind.MEAN, 4);
        Procedure returned = procedure(mean, mean).with(Returning.NOT_DISCLOSED.withOrder(Optional.of(new RunOrder("ABA"))));
        int shown = 0;
        for (int k = 0; k < 1500; k++) {
            double pull = 0.002 + 0.014 * random.nextDouble();
            double refit = 0.003 + 0.017 * random.nextDouble();
            double a = refit * (normal(random) + normal(random)) / 2 + pull * normal(random) / 2;
            double b = refit * normal(random) + pull * normal(random) / 2;
            StatedScatter stated = new StatedScatter(estimated(pull, 6, random), Optional.of(estimated(refit, 4, random)), Optional.empty());
            shown += Grading.grade(new Grading.Pair(LEVEL * (b - a), LEVEL, 0.05), 0, returned.withScatter(Optional.of(stated)), ONE,
                    PlausibleScatter.of(Optional.of(stated), BEFORE)).grade() == Grade.SHOWN ? 1 : 0;
        }

        assertThat(shown / 1500.0).isLessThan(0.05);
    }

    private static StatedScatter.Layer estimated(double deviation, int freedom, SplittableRandom random) {
        double squares = 0;
        for (int k = 0; k < freedom; k++) {
            double one = normal(random);
            squares += one * one;
        }
        return new StatedScatter.Layer(new Printed(100 * deviation * Math.sqrt(squares / freedom), 3, Units.PERCENT),
                OptionalDouble.of(freedom));
    }

    private static StatedScatter.Layer layer(String deviation, double freedom) {
        return new StatedScatter.Layer(Printed.parse(deviation).orElseThrow(), OptionalDouble.of(freedom));
    }

    private static PublishedDifference single(ScatterShares shares) {
        return new PublishedDifference(10, LEVEL, 0, Assumptions.ordinary(procedure(Quote.single(), Quote.single()), shares, ONE));
    }

    private static Procedure procedure(Quote before, Quote after) {
        return Procedure.notDisclosed().with(Quoting.NOT_DISCLOSED.withQuotes(before, after).withNamedBefore(Optional.of(true)))
                .with(Keeping.all()).with(Correcting.NOT_DISCLOSED
                        .withCorrections(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J1349)));
    }

    private static double normal(SplittableRandom random) {
        return Normal.upperQuantile(random.nextDouble(Double.MIN_NORMAL, 1));
    }
}

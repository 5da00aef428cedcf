package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.engine.audit.Grading.Pair;
import fairpull.engine.stats.Normal;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Simulated publications of an unchanged car, its scatter anywhere within the plausible range: how often a gain is graded “shown”. */
class GradingTest {
    private static final double LEVEL = 200;
    private static final double ONE = 1.959964;
    private static final long SEED = 20261;

    /** How a publication comes about; the procedure is what it says of itself. */
    private enum Manner {
        SINGLE_PULLS(Quote.single(), Quote.single(), true),
        MEANS(new Quote(Quote.Kind.MEAN, 3), new Quote(Quote.Kind.MEAN, 5), true),
        BEST_AGAINST_SINGLE(Quote.single(), new Quote(Quote.Kind.BEST, 5), true),
        BEST_AGAINST_BEST(new Quote(Quote.Kind.BEST, 2), new Quote(Quote.Kind.BEST, 5), true),
        PICKED_SPEED(Quote.single(), Quote.single(), false);

        private final Quote before;
        private final Quote after;
        private final boolean named;

        Manner(Quote before, Quote after, boolean named) {
            this.before = before;
            this.after = after;
            this.named = named;
        }
    }

    @ParameterizedTest
    @EnumSource(Manner.class)
    void anUnchangedCarIsHardlyEverShownToHaveGained(Manner manner) {
        assertThat(shownOf(manner, 120)).isLessThan(0.05);
    }

    /** Seed 20261, 1500 publications a manner. */
    @Tag("slow")
    @ParameterizedTest
    @EnumSource(Manner.class)
    void norInManyMorePublications(Manner manner) {
        assertThat(shownOf(manner, 1500)).isLessThan(0.05);
    }

    @Test
    void aSoundPublicationOfALargeGainIsShownAndASilentOneHangsOnWhatItDoesNotSay() {
        Quote mean = new Quote(Quote.Kind.MEAN, 5);
        Procedure sound = disclosed(mean, mean, true);

        assertThat(Grading.grade(new Pair(16, LEVEL, 0.05), 0, sound, ONE).grade()).isEqualTo(Grade.SHOWN);
        assertThat(Grading.grade(new Pair(10, LEVEL, 0.05), 0, sound, ONE).grade()).as("fitting the part anew scatters too")
                .isEqualTo(Grade.PLAUSIBLE);
        assertThat(Grading.grade(new Pair(10, LEVEL, 0.05), 0, Procedure.notDisclosed(), 2.9).grade()).isEqualTo(Grade.PLAUSIBLE);
        assertThat(Grading.grade(new Pair(2, LEVEL, 0.05), 0, sound, ONE).grade()).isEqualTo(Grade.PLAUSIBLE);
        assertThat(Grading.grade(new Pair(2, LEVEL, 0.05), 0, Procedure.notDisclosed(), 2.9).grade()).isEqualTo(Grade.NOT_SHOWN);
        assertThat(Grading.grade(new Pair(8.8, LEVEL, 0.05), 15, sound, ONE).reason())
                .isEqualTo(GradedClaim.Reason.FIGURES_FALL_SHORT);
    }

    @Test
    void twoRigsAndTwoStandardsAreNeverShown() {
        Procedure sound = disclosed(Quote.single(), Quote.single(), true);
        Procedure rigs = sound.withRig(Optional.of(Sameness.DIFFERENT));
        Procedure standards = sound.withCorrections(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J607));

        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, rigs, ONE).grade()).isEqualTo(Grade.NOT_SHOWN);
        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, standards, ONE).reason())
                .isEqualTo(GradedClaim.Reason.STANDARDS_DIFFER);
    }

    /** The tipping factor is where chance alone gives the difference in 5 %: 10 hp at 200 hp, single pulls of 0.7 %, is 1.98·1.96. */
    @Test
    void tippingIsWhereChanceAloneReachesFivePercent() {
        Procedure sound = disclosed(Quote.single(), Quote.single(), true);
        PublishedDifference difference = new PublishedDifference(10, LEVEL, 0,
                Assumptions.ordinary(sound, ScatterShares.ORDINARY, ONE));

        assertThat(difference.tippingFactor()).isCloseTo(10 / (ONE * 1.4 * Math.sqrt(2)), within(1e-6));
        assertThat(difference.chanceAlone()).isCloseTo(2 * Normal.upperTail(10 / (1.4 * Math.sqrt(2))), within(1e-12));
    }

    /** A sweep of no length is one speed; a longer one asks for more, never for more than so many independent speeds would. */
    @Test
    void aPickedSpeedAsksForMore() {
        double sweep = PickedSpeed.criticalValue(PickedSpeed.SWEEP_RPM, PickedSpeed.CORRELATION_LENGTH_RPM);

        assertThat(PickedSpeed.criticalValue(0, 400)).isCloseTo(ONE, within(1e-5));
        assertThat(sweep).isBetween(2.6, Normal.upperQuantile(0.025 / 41));
    }

    private static double shownOf(Manner manner, int publications) {
        SplittableRandom random = new SplittableRandom(SEED);
        double critical = manner.named ? ONE : PickedSpeed.criticalValue(4000, 400);
        int shown = 0;
        for (int k = 0; k < publications; k++) {
            double pull = LEVEL * (0.002 + 0.014 * random.nextDouble());
            double difference = manner.named
                    ? pull * (quoted(manner.after, random) - quoted(manner.before, random))
                    : pull * Math.sqrt(2) * largestOfSweep(random);
            Pair pair = new Pair(difference, LEVEL, 0.05);
            shown += Grading.grade(pair, 0, disclosed(manner.before, manner.after, manner.named), critical).grade() == Grade.SHOWN ? 1 : 0;
        }
        return (double) shown / publications;
    }

    private static double quoted(Quote quote, SplittableRandom random) {
        double best = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int pull = 0; pull < quote.pulls(); pull++) {
            double value = normal(random);
            best = Math.max(best, value);
            sum += value;
        }
        return quote.isPicked() ? best : sum / quote.pulls();
    }

    /** The largest of 81 speeds 50 rpm apart, correlated over 400 rpm. */
    private static double largestOfSweep(SplittableRandom random) {
        double[] noise = new double[81 + 48];
        for (int k = 0; k < noise.length; k++) {
            noise[k] = normal(random);
        }
        double largest = Double.NEGATIVE_INFINITY;
        for (int speed = 0; speed < 81; speed++) {
            double sum = 0;
            double squares = 0;
            for (int k = 0; k < noise.length; k++) {
                double apart = (k - 24 - speed) / 8.0;
                double weight = Math.exp(-apart * apart);
                sum += weight * noise[k];
                squares += weight * weight;
            }
            largest = Math.max(largest, sum / Math.sqrt(squares));
        }
        return largest;
    }

    private static double normal(SplittableRandom random) {
        return Normal.upperQuantile(random.nextDouble(Double.MIN_NORMAL, 1));
    }

    private static Procedure disclosed(Quote before, Quote after, boolean named) {
        Optional<Sameness> same = Optional.of(Sameness.SAME);
        return Procedure.notDisclosed().withQuotes(BeforeAfter.of(before, after)).withRig(same).withStrapDown(same).withDay(same)
                .withOtherChanges(same).withCorrections(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J1349))
                .withNamedBefore(Optional.of(named)).withReturnedSaid(Optional.of(true));
    }
}

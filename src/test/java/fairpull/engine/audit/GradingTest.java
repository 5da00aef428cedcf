package fairpull.engine.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairpull.domain.air.Barometer;
import fairpull.domain.audit.BeforeAfter;
import fairpull.domain.audit.Correcting;
import fairpull.domain.audit.Grade;
import fairpull.domain.audit.GradedClaim;
import fairpull.domain.audit.Keeping;
import fairpull.domain.audit.Procedure;
import fairpull.domain.audit.Quote;
import fairpull.domain.audit.Quoting;
import fairpull.domain.audit.Returning;
import fairpull.domain.audit.Sameness;
import fairpull.domain.audit.ScatterShares;
import fairpull.domain.plan.Correction;
import fairpull.engine.audit.Grading.Pair;
import fairpull.engine.stats.Normal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Grades of single publications; how often an unchanged car is graded “shown” stands in {@link GradingSharesTest}. */
class GradingTest {
    private static final double LEVEL = 200;
    private static final double ONE = 1.959964;

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
        Procedure rigs = sound.with(sound.keeping().withStrapDown(Optional.empty()).withRig(Optional.of(Sameness.DIFFERENT)));
        Procedure standards = sound.with(sound.correcting().withCorrections(
                BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J607)));

        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, rigs, ONE).grade()).isEqualTo(Grade.NOT_SHOWN);
        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, standards, ONE).reason())
                .isEqualTo(GradedClaim.Reason.STANDARDS_DIFFER);
    }

    /** A pressure is nothing to a figure that was not corrected by it. */
    @Test
    void barometersCountOnlyBehindCorrections() {
        Procedure sound = disclosed(new Quote(Quote.Kind.MEAN, 5), new Quote(Quote.Kind.MEAN, 5), true);
        Procedure differing = sound.with(sound.correcting().withBarometers(
                BeforeAfter.of(Barometer.Kind.SEA_LEVEL, Barometer.Kind.STATION)));
        Procedure measured = differing.with(differing.correcting().withCorrections(
                BeforeAfter.of(Correction.NONE, Correction.NONE)));

        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, differing, ONE).reason())
                .isEqualTo(GradedClaim.Reason.BAROMETERS_DIFFER);
        assertThat(Grading.grade(new Pair(60, LEVEL, 0.05), 0, measured, ONE).reason())
                .isEqualTo(GradedClaim.Reason.STANDS_AT_THE_WORST);
        assertThat(Assumptions.barometer(differing)).isPositive();
        assertThat(Assumptions.barometer(measured)).isZero();
        assertThat(Assumptions.mayMixBarometers(measured)).isFalse();
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

        assertThat(PickedSpeed.criticalValue(0, 100)).isCloseTo(ONE, within(1e-5));
        assertThat(sweep).isBetween(2.9, Normal.upperQuantile(0.025 / 161));
    }

    private static Procedure disclosed(Quote before, Quote after, boolean named) {
        return Procedure.notDisclosed().with(Quoting.NOT_DISCLOSED.withQuotes(before, after).withNamedBefore(Optional.of(named)))
                .with(Keeping.all()).with(Returning.NOT_DISCLOSED.withSaid(Optional.of(true))).with(Correcting.NOT_DISCLOSED
                        .withCorrections(BeforeAfter.of(Correction.SAE_J1349, Correction.SAE_J1349)));
    }
}

package fairpull.engine.planning;

import fairpull.domain.day.DayClock;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Sides;
import fairpull.engine.stats.NoncentralT;
import fairpull.engine.stats.Randomisation;
import fairpull.engine.stats.Roots;
import fairpull.engine.stats.StudentT;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;

/**
 * What a sequence can see: standard error by generalised least squares at the scatter given, degrees of freedom by the expected
 * information, power from the non-central t, and what it would take to reach the power wanted. With planned looks the chances are
 * simulated ({@link LookCampaigns}).
 *
 * <p>Checked against: dense matrices and the non-central t of R (computed/size-r).
 */
public final class Sizing {
    private static final int MOST_PULLS = 100;
    private static final int MOST_INSTALLS = 30;
    private static final int FEWEST_INSTALLS = 3;
    /** Where the power wanted is not reached at this many standard errors it never will be. */
    private static final double OUT_OF_REACH = 1e290;
    private static final double ACCURACY = 1e-13;

    private Sizing() {
    }

    /**
     * What a sequence can see.
     *
     * @param question order, pulls, scatter, gain, test and clock
     * @return the answer; figures are empty where the sequence cannot be judged or the power wanted is out of reach
     * @throws IllegalArgumentException if the order is malformed or a figure is out of its range
     */
    public static SizeAnswer size(SizeQuestion question) {
        SizeAnswer figures = figures(question);
        OptionalInt pulls = pullsNeeded(question);
        OptionalInt installs = installsNeeded(question);
        return question.looks().isEmpty() ? figures.withNeeds(pulls, installs)
                : figures.withNeeds(LookSizing.pullsNeeded(question, pulls, MOST_PULLS),
                        LookSizing.installsNeeded(question, installs, MOST_INSTALLS));
    }

    /**
     * What a sequence can see, without what it would take to reach the power wanted: a fraction of the work.
     *
     * @param question as in {@link #size}
     * @return the answer of {@link #size}, pulls and installs needed left empty
     * @throws IllegalArgumentException as {@link #size}
     */
    public static SizeAnswer figures(SizeQuestion question) {
        requireSound(question);
        SizeAnswer once = atTheEnd(question);
        return question.looks().isPresent() ? LookSizing.figures(question, once) : once;
    }

    private static SizeAnswer atTheEnd(SizeQuestion question) {
        SequenceDesign design = SequenceDesign.of(question);
        Optional<Precision> precision = Precision.of(design, question);
        return new SizeAnswer(
                figure(precision.map(p -> power(p, question.gain(), question))),
                precision.map(p -> detectableGain(p, question)).orElse(OptionalDouble.empty()),
                figure(precision.map(Precision::standardError)),
                figure(precision.map(Precision::degreesOfFreedom)),
                design.minutes(),
                precision.flatMap(p -> Precision.withoutPullScatter(design, question)).map(p -> detectableGain(p, question))
                        .orElse(OptionalDouble.empty()),
                Randomisation.leastPValue(design.sessionOfInstall(), design.installIsB()),
                OptionalInt.empty(),
                OptionalInt.empty());
    }

    /**
     * When everything happens on the days of a sequence.
     *
     * @param question as in {@link #size}
     * @return the clock of every session
     */
    public static List<DayClock> clock(SizeQuestion question) {
        requireSound(question);
        return SequenceDesign.clock(question);
    }

    /** {@return the smallest gain that some days find with the power wanted, looked at once} */
    static OptionalDouble detectableGain(SizeQuestion question, List<DayClock> days) {
        return Precision.of(SequenceDesign.of(question, days), question).map(precision -> detectableGain(precision, question))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble figure(Optional<Double> figure) {
        return figure.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static OptionalInt pullsNeeded(SizeQuestion question) {
        for (int pulls = 1; pulls <= MOST_PULLS; pulls++) {
            if (reaches(question.withPulls(pulls))) {
                return OptionalInt.of(pulls);
            }
        }
        return OptionalInt.empty();
    }

    private static OptionalInt installsNeeded(SizeQuestion question) {
        for (int installs = FEWEST_INSTALLS; installs <= MOST_INSTALLS; installs++) {
            if (reaches(question.withSequence("AB".repeat(installs).substring(0, installs)))) {
                return OptionalInt.of(installs);
            }
        }
        return OptionalInt.empty();
    }

    /** Whether a single look at the end reaches the power wanted. */
    static boolean reaches(SizeQuestion question) {
        return Precision.of(SequenceDesign.of(question), question)
                .filter(p -> power(p, question.gain(), question) >= question.powerWanted()).isPresent();
    }

    static double power(Precision precision, double gain, SizeQuestion question) {
        return power(precision, gain, critical(precision, question.errorRate(), question.sides()), question.sides());
    }

    private static double critical(Precision precision, double errorRate, Sides sides) {
        double tail = sides == Sides.ONE ? errorRate : errorRate / 2;
        return StudentT.upperQuantile(tail, precision.degreesOfFreedom());
    }

    /** 1 − F(t; ν, δ) with t the critical value and δ = gain/se; two-sided also F(−t; ν, δ). */
    private static double power(Precision precision, double gain, double critical, Sides sides) {
        double df = precision.degreesOfFreedom();
        double noncentrality = gain / precision.standardError();
        double upper = 1 - NoncentralT.cdf(critical, df, noncentrality);
        return sides == Sides.ONE ? upper : upper + NoncentralT.cdf(-critical, df, noncentrality);
    }

    static OptionalDouble detectableGain(Precision precision, SizeQuestion question) {
        double se = precision.standardError();
        if (question.powerWanted() <= question.errorRate()) {
            return OptionalDouble.of(0);
        }
        double critical = critical(precision, question.errorRate(), question.sides());
        DoubleUnaryOperator missing = gain -> power(precision, gain, critical, question.sides()) - question.powerWanted();
        double low = 0;
        double high = 4 * se;
        while (missing.applyAsDouble(high) < 0) {
            low = high;
            high *= 4;
            if (high > OUT_OF_REACH * se) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(Roots.between(missing, low, high, ACCURACY));
    }

    static void requireSound(SizeQuestion question) {
        require(question.pulls() >= 1, "counted pulls per install must be 1 or more", question.pulls());
        require(question.warmUps() >= 0, "warm-up pulls must be 0 or more", question.warmUps());
        require(positive(question.pullScatter()), "pull scatter must be above 0", question.pullScatter());
        require(positive(question.refitScatter()), "refit scatter must be above 0", question.refitScatter());
        require(question.pullDegreesOfFreedom() >= 0, "degrees of freedom must be 0 or more", question.pullDegreesOfFreedom());
        require(question.refitDegreesOfFreedom() >= 0, "degrees of freedom must be 0 or more", question.refitDegreesOfFreedom());
        require(positive(question.gain()), "the gain must be above 0", question.gain());
        require(question.powerWanted() > 0 && question.powerWanted() < 1, "the power wanted must lie between 0 and 1",
                question.powerWanted());
        require(question.errorRate() > 0 && question.errorRate() < 0.5, "the error rate must lie between 0 and 0.5",
                question.errorRate());
        require(positive(question.clock().intervalMinutes()), "the interval must be above 0 minutes", question.clock().intervalMinutes());
        require(question.clock().swapMinutes() >= 0, "a swap must take 0 minutes or more", question.clock().swapMinutes());
        require(question.clock().setUpMinutes() >= 0, "set-up must take 0 minutes or more", question.clock().setUpMinutes());
    }

    private static boolean positive(double figure) {
        return figure > 0 && Double.isFinite(figure);
    }

    private static void require(boolean sound, String rule, double was) {
        if (!sound) {
            throw new IllegalArgumentException(rule + ", was " + was);
        }
    }
}

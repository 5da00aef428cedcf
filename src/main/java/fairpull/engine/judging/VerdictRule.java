package fairpull.engine.judging;

import fairpull.domain.finding.Interval;
import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.Verdict;
import fairpull.domain.finding.Verdict.CannotBeJudged;
import fairpull.domain.finding.Verdict.Gain;
import fairpull.domain.finding.Verdict.Loss;
import fairpull.domain.finding.Verdict.NoDifferenceThatMatters;
import fairpull.domain.finding.Verdict.Undecided;
import fairpull.domain.finding.Verdict.WhyUndecided;
import fairpull.domain.finding.Worthwhile;
import fairpull.domain.plan.Better;
import java.util.Optional;

/** From a fit to what is said of it. */
final class VerdictRule {
    private VerdictRule() {
    }

    /**
     * The verdict. Interval beyond 0: gain or loss; else equivalence p below the error rate: no difference that matters; else
     * undecided. With unequal pulls and no record of refit scatter the test on install means has to say the same, since the error rate
     * of the mixed model can then pass the one asked for.
     */
    static Verdict of(CoreFit fit, JudgeSettings settings, boolean equalPulls) {
        return of(fit, settings, equalPulls, new CriticalValues(settings));
    }

    static Verdict of(CoreFit fit, JudgeSettings settings, boolean equalPulls, CriticalValues criticals) {
        if (fit.why().isPresent()) {
            return new CannotBeJudged(fit.why().get());
        }
        Verdict verdict = of(fit.change().orElseThrow(), settings, criticals);
        boolean needsAgreement = settings.refitRecord().isEmpty() && !equalPulls && isDecided(verdict);
        boolean agrees = !needsAgreement
                || fit.installMeans().map(means -> of(means, settings, criticals)).filter(verdict::equals).isPresent();
        return agrees ? verdict : new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE);
    }

    private static Verdict of(TStatement change, JudgeSettings settings, CriticalValues criticals) {
        GainInterval interval = GainInterval.of(change.interval(settings, criticals), settings.better());
        if (interval.near() > 0) {
            return new Gain();
        }
        if (interval.far() < 0) {
            return new Loss();
        }
        boolean noDifference = settings.worthwhileGain().isPresent()
                && change.isWithin(settings.worthwhileGain().getAsDouble(), criticals);
        return noDifference ? new NoDifferenceThatMatters() : new Undecided(WhyUndecided.INTERVAL_TOO_WIDE);
    }

    /** Whether something is said that the error rate has to cover. */
    private static boolean isDecided(Verdict verdict) {
        return kind(verdict) != Kind.UNDECIDED && kind(verdict) != Kind.CANNOT_BE_JUDGED;
    }

    /** Whether two verdicts say the same, whatever their reasons. */
    static boolean sameKind(Verdict one, Verdict other) {
        return kind(one) == kind(other);
    }

    /** Yes: the whole interval at or beyond the gain that matters; no: its favourable end short of it; else open. */
    static Optional<Worthwhile> worthwhile(Verdict verdict, Optional<Interval> interval, JudgeSettings settings) {
        if (interval.isEmpty() || settings.worthwhileGain().isEmpty()) {
            return Optional.empty();
        }
        if (verdict.equals(new Undecided(WhyUndecided.INSTALL_MEANS_DISAGREE))) {
            return Optional.of(Worthwhile.OPEN);
        }
        double gain = settings.worthwhileGain().getAsDouble();
        GainInterval ends = GainInterval.of(interval.get(), settings.better());
        if (ends.near() >= gain) {
            return Optional.of(Worthwhile.YES);
        }
        return Optional.of(ends.far() < gain ? Worthwhile.NO : Worthwhile.OPEN);
    }

    private enum Kind {
        GAIN, LOSS, NO_DIFFERENCE, UNDECIDED, CANNOT_BE_JUDGED
    }

    private static Kind kind(Verdict verdict) {
        return verdict.match(new Verdict.Cases<>() {
            @Override
            public Kind gain() {
                return Kind.GAIN;
            }

            @Override
            public Kind loss() {
                return Kind.LOSS;
            }

            @Override
            public Kind noDifferenceThatMatters() {
                return Kind.NO_DIFFERENCE;
            }

            @Override
            public Kind undecided(WhyUndecided why) {
                return Kind.UNDECIDED;
            }

            @Override
            public Kind cannotBeJudged(Verdict.WhyNotJudged why) {
                return Kind.CANNOT_BE_JUDGED;
            }
        });
    }

    /**
     * An interval turned so that a positive number is a gain.
     *
     * @param near the end on the side of a loss
     * @param far the favourable end
     */
    record GainInterval(double near, double far) {
        static GainInterval of(Interval interval, Better better) {
            return better == Better.MORE ? new GainInterval(interval.low(), interval.high())
                    : new GainInterval(-interval.high(), -interval.low());
        }
    }
}

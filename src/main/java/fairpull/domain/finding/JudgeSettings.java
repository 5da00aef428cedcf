package fairpull.domain.finding;

import fairpull.domain.plan.Better;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Sides;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a table is judged; all of it named before the day.
 *
 * @param drift how what changes with the clock is modelled
 * @param covariates names of the table's covariates whose slope is taken out
 * @param pullRecord what is known of pull scatter beforehand
 * @param refitRecord what is known of refit scatter beforehand
 * @param worthwhileGain the smallest gain that matters, positive
 * @param errorRate how often a change may be announced where there is none
 * @param sides either way, or only for a gain
 * @param better which direction is a gain
 * @param drawn whether the order was drawn among all orders with the same counts, within each session
 */
public record JudgeSettings(Drift drift, List<String> covariates, Optional<ScatterRecord> pullRecord, Optional<ScatterRecord> refitRecord,
        OptionalDouble worthwhileGain, double errorRate, Sides sides, Better better, boolean drawn) {
    public JudgeSettings {
        covariates = List.copyOf(covariates);
        if (!(errorRate > 0 && errorRate < 0.5)) {
            throw new IllegalArgumentException("the error rate must lie between 0 and 0.5, was " + errorRate);
        }
        worthwhileGain.ifPresent(gain -> {
            if (!(gain > 0) || Double.isInfinite(gain)) {
                throw new IllegalArgumentException("the worthwhile gain must be above 0, was " + gain);
            }
        });
    }

    /** {@return plain settings: no drift, own data, 5 %, two-sided, more is better} */
    public static JudgeSettings plain() {
        return new JudgeSettings(Drift.NONE, List.of(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), 0.05, Sides.TWO,
                Better.MORE, false);
    }

    /** {@return these settings with another drift} */
    public JudgeSettings withDrift(Drift other) {
        return new JudgeSettings(other, covariates, pullRecord, refitRecord, worthwhileGain, errorRate, sides, better, drawn);
    }

    /** {@return these settings with other covariates} */
    public JudgeSettings withCovariates(List<String> names) {
        return new JudgeSettings(drift, names, pullRecord, refitRecord, worthwhileGain, errorRate, sides, better, drawn);
    }

    /** {@return these settings with records of the two scatters} */
    public JudgeSettings withRecords(Optional<ScatterRecord> pull, Optional<ScatterRecord> refit) {
        return new JudgeSettings(drift, covariates, pull, refit, worthwhileGain, errorRate, sides, better, drawn);
    }

    /** {@return these settings with a worthwhile gain} */
    public JudgeSettings withWorthwhileGain(double gain) {
        return new JudgeSettings(drift, covariates, pullRecord, refitRecord, OptionalDouble.of(gain), errorRate, sides, better, drawn);
    }

    /** {@return these settings with other sides and another better direction} */
    public JudgeSettings looking(Sides otherSides, Better otherBetter) {
        return new JudgeSettings(drift, covariates, pullRecord, refitRecord, worthwhileGain, errorRate, otherSides, otherBetter, drawn);
    }

    /** {@return these settings with another error rate} */
    public JudgeSettings withErrorRate(double other) {
        return new JudgeSettings(drift, covariates, pullRecord, refitRecord, worthwhileGain, other, sides, better, drawn);
    }

    /** {@return these settings for an order drawn at random, or not} */
    public JudgeSettings drawn(boolean atRandom) {
        return new JudgeSettings(drift, covariates, pullRecord, refitRecord, worthwhileGain, errorRate, sides, better, atRandom);
    }
}

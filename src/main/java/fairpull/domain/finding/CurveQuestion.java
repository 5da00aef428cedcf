package fairpull.domain.finding;

import java.util.Objects;
import java.util.Optional;

/**
 * How a table of curves is judged.
 *
 * @param settings drift, covariates, error rate, sides and direction as for a single measure; their records hold for one level and are
 *     not looked at
 * @param declared whether grid and bandwidth were named before the day
 * @param pullRecord what is known of pull scatter, over the level
 * @param refitRecord what is known of refit scatter, over the level
 * @param draws how many directions are drawn for the critical value, above 0
 * @param seed of the draws
 */
public record CurveQuestion(JudgeSettings settings, boolean declared, Optional<RelativeScatter> pullRecord,
        Optional<RelativeScatter> refitRecord, int draws, long seed) {
    /** Directions drawn where nobody asks for another number. */
    public static final int DRAWS = 10_000;
    /** Where nobody asks for another seed. */
    public static final long SEED = 1;

    public CurveQuestion {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(pullRecord, "pullRecord");
        Objects.requireNonNull(refitRecord, "refitRecord");
        if (draws < 1) {
            throw new IllegalArgumentException("at least one direction has to be drawn, was " + draws);
        }
    }

    /** A question with the usual number of draws. */
    public CurveQuestion(JudgeSettings settings, boolean declared, Optional<RelativeScatter> pullRecord,
            Optional<RelativeScatter> refitRecord) {
        this(settings, declared, pullRecord, refitRecord, DRAWS, SEED);
    }
}

package fairpull.engine.planning;

import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Notice.Code;
import fairpull.domain.finding.SizeQuestion;
import fairpull.domain.plan.Looks;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Holds planned looks against the degrees of freedom that own data have there. With one or two of them t has to be many times as large as
 * the bound of known scatter, and where refit scatter does not show beside pull scatter the standard error is held up by that, so that t
 * is never so large: such a look decides next to nothing.
 */
final class LookReview {
    /** Below these, bounds for known scatter keep the error rate only nearly (simulated: up to 5.9 % in place of 5 %). */
    private static final int FEW_DEGREES_OF_FREEDOM = 10;
    /** Up to these, the level of a look before the end asks for a t several times that of known scatter. */
    private static final int VERY_FEW_DEGREES_OF_FREEDOM = 2;
    /** A look that finds the gain less often than this is hardly worth its share of the error rate. */
    private static final double LITTLE_CHANCE = 0.1;

    private LookReview() {
    }

    /**
     * What is to be said of looks judged by own data; nothing where there is a record of refit scatter.
     *
     * @param question with looks
     * @param chances of finding the gain at each look alone; an empty list where they are not known
     */
    static List<Notice> of(SizeQuestion question, List<OptionalDouble> chances) {
        List<Notice> notices = new ArrayList<>();
        if (question.refitDegreesOfFreedom() > 0) {
            return notices;
        }
        Looks looks = question.looks().orElseThrow();
        boolean approximate = false;
        for (int k = 0; k < looks.count(); k++) {
            double after = looks.afterInstalls().get(k);
            double df = SequenceDesign.of(question.withSequence(Looks.first(question.sequence(), looks.afterInstalls().get(k))))
                    .installDegreesOfFreedom();
            if (df < 1) {
                notices.add(Notice.of(Code.PLAN_LOOK_TOO_EARLY, after, after + 1 - df));
            } else if (k + 1 < looks.count() && decidesLittle(df, chances, k)) {
                notices.add(chances.isEmpty() ? Notice.of(Code.PLAN_LOOK_DECIDES_LITTLE, after, df)
                        : Notice.of(Code.PLAN_LOOK_DECIDES_LITTLE, after, df, chances.get(k).orElse(0)));
            } else if (df < FEW_DEGREES_OF_FREEDOM && !approximate) {
                notices.add(Notice.of(Code.PLAN_LOOK_APPROXIMATE, after, df));
                approximate = true;
            }
        }
        return notices;
    }

    /** Where the chance is not known, one degree of freedom is enough to tell. */
    private static boolean decidesLittle(double df, List<OptionalDouble> chances, int look) {
        return chances.isEmpty() ? df < VERY_FEW_DEGREES_OF_FREEDOM
                : df <= VERY_FEW_DEGREES_OF_FREEDOM && chances.get(look).orElse(0) < LITTLE_CHANCE;
    }
}

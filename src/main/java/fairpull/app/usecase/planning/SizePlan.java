package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeQuestion;
import fairpull.engine.planning.Sizing;

/** Says what a sequence can see. */
public final class SizePlan {
    private SizePlan() {
    }

    /** {@return what the sequence in question can see} */
    public static SizeAnswer size(SizeQuestion question) {
        try {
            return Sizing.size(question);
        } catch (IllegalArgumentException malformed) {
            throw new UsageException("size", malformed.getMessage());
        }
    }
}

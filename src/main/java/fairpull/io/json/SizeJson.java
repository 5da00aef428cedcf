package fairpull.io.json;

import fairpull.domain.finding.SizeAnswer;

/** What a sequence can see, as JSON. */
public final class SizeJson {
    private SizeJson() {
    }

    /** {@return the answer as a document} */
    public static String document(SizeAnswer answer) {
        return tree(answer).document();
    }

    static Tree tree(SizeAnswer answer) {
        return Tree.empty()
                .number("power", answer.power())
                .number("detectableGain", answer.detectableGain())
                .number("standardError", answer.standardError())
                .number("degreesOfFreedom", answer.degreesOfFreedom())
                .number("minutes", answer.minutes())
                .number("limit", answer.limit())
                .number("leastRandomisationP", answer.leastRandomisationP())
                .whole("pullsNeeded", answer.pullsNeeded())
                .whole("installsNeeded", answer.installsNeeded());
    }
}

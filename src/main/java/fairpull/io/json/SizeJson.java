package fairpull.io.json;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeLooks;

/** What a sequence can see, as JSON. */
public final class SizeJson {
    private SizeJson() {
    }

    /** {@return the answer as a document} */
    public static String document(SizeAnswer answer) {
        return tree(answer).document();
    }

    static Tree tree(SizeAnswer answer) {
        Tree tree = Tree.empty()
                .number("power", answer.power())
                .number("detectableGain", answer.detectableGain())
                .number("standardError", answer.standardError())
                .number("degreesOfFreedom", answer.degreesOfFreedom())
                .number("minutes", answer.minutes())
                .number("limit", answer.limit())
                .number("leastRandomisationP", answer.leastRandomisationP())
                .whole("pullsNeeded", answer.pullsNeeded())
                .whole("installsNeeded", answer.installsNeeded());
        answer.looks().ifPresent(looks -> tree.number("inflation", looks.inflation()).trees("looks", looks.looks(), SizeJson::look));
        return tree;
    }

    private static void look(Tree tree, SizeLooks.Place look) {
        tree.whole("afterInstalls", look.afterInstalls()).number("informationFraction", look.informationFraction())
                .number("bound", look.bound()).number("level", look.level()).number("errorSpent", look.errorSpent())
                .number("chance", look.chance());
    }
}

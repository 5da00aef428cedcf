package fairpull.io.json;

import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.finding.SizeLooks;
import java.util.List;

/** What a sequence can see, as JSON. */
public final class SizeJson {
    private SizeJson() {
    }

    /** {@return the answer as a document, with what a reader must know of its looks where there are any} */
    public static String document(SizeAnswer answer, List<String> warnings) {
        Tree tree = tree(answer);
        return (answer.looks().isPresent() ? tree.texts("warnings", warnings) : tree).document();
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

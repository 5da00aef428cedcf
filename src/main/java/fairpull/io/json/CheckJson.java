package fairpull.io.json;

import fairpull.domain.day.DayFit;
import fairpull.domain.finding.SizeAnswer;
import fairpull.domain.plan.Plan;
import java.util.List;
import java.util.Optional;

/** What is to be said of a test's plan, as JSON. */
public final class CheckJson {
    private CheckJson() {
    }

    /** {@return the document; {@code size} is null where the plan cannot be sized} */
    public static String document(Plan plan, Optional<String> code, String planSha256, Optional<SizeAnswer> size, DayFit fit,
            List<String> warnings) {
        Tree tree = Tree.empty().text("title", plan.title()).text("sequence", plan.sequence().letters())
                .text("measure", plan.question().deciding().name()).text("unit", plan.question().deciding().unit().symbol())
                .text("seal", code.orElse(null)).text("planSha256", planSha256);
        size.ifPresentOrElse(answer -> tree.tree("size", SizeJson.tree(answer)), () -> tree.nothing("size"));
        DayJson.fill(tree, fit);
        return tree.texts("warnings", warnings).document();
    }
}

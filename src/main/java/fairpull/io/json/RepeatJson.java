package fairpull.io.json;

import fairpull.domain.audit.Repeat;
import java.util.Locale;

/** The fair repeat of a publication as JSON; gains are in the unit of the figure claimed about. */
final class RepeatJson {
    private RepeatJson() {
    }

    static Tree tree(Repeat repeat) {
        Tree tree = Tree.empty().text("outcome", repeat.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .text("figure", repeat.figure().name()).text("unit", repeat.figure().before().unit().symbol())
                .number("gain", repeat.gain());
        repeat.plan().ifPresent(plan -> tree.text("measure", plan.question().deciding().name()));
        repeat.best().ifPresent(days -> tree.tree("best", tree(days)));
        repeat.recorded().ifPresent(days -> tree.tree("withRecord", tree(days)));
        return tree;
    }

    private static Tree tree(Repeat.Days days) {
        return Tree.empty().text("sequence", days.order()).whole("pulls", days.pulls()).whole("warmUps", days.warmUps())
                .number("minutes", days.minutes()).number("detectableGain", days.detectableGain());
    }
}

package fairpull.report.wording;

import fairpull.domain.rig.TestsBeside;
import fairpull.domain.rig.TestsBeside.LayerBeside;
import java.util.ArrayList;
import java.util.List;

/** What tests say of the rig on which they were run, beside its record. */
public final class RigTestWords {
    private RigTestWords() {
    }

    /** {@return what the installs of A of some tests show of the rig} */
    public static List<String> sentences(TestsBeside beside) {
        List<String> sentences = new ArrayList<>();
        beside.layers().forEach(layer -> sentences.add(layer(layer)));
        if (beside.layers().isEmpty()) {
            sentences.add("No layer of scatter is told by the tests and the record both.");
        }
        sentences.add("With the installs of A of " + Numbers.count(beside.tests(), "test") + " taken in: "
                + RigWords.change(beside.together()) + " Each mean is over the level that its plan expected, so another car, or a poor "
                + "guess of its level, looks like a rig that changed.");
        return sentences;
    }

    private static String layer(LayerBeside layer) {
        String name = RigWords.layer(layer.layer());
        String figures = "of the tests " + RigWords.percent(layer.share()) + " with "
                + Numbers.withDegreesOfFreedom(layer.degreesOfFreedom()) + ", of the record " + RigWords.percent(layer.record().share())
                + " with " + Numbers.degreesOfFreedom(layer.record().degreesOfFreedom()) + " (F" + Numbers.THIN + "=" + Numbers.THIN
                + Numbers.brief(layer.f(), "") + ", " + Numbers.p(layer.pValue()) + ", two-sided)";
        return !layer.differs() ? "Tests and record are not shown to differ in " + name + " scatter: " + figures + "."
                : "The tests show " + (layer.f() > 1 ? "more " : "less ") + name + " scatter than the record: " + figures
                        + ". Look for what changed, and take new baselines.";
    }
}

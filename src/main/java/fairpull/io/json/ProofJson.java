package fairpull.io.json;

import fairpull.domain.proof.ProofAnswer;
import fairpull.domain.proof.ProofQuestion;
import fairpull.domain.proof.Share;
import fairpull.domain.proof.Tally;
import java.util.List;
import java.util.stream.IntStream;

/** What a simulated plan showed, as JSON. */
public final class ProofJson {
    private ProofJson() {
    }

    /** {@return the answer as a document} */
    public static String document(ProofQuestion question, ProofAnswer answer, List<String> warnings) {
        double errorRate = question.settings().errorRate();
        Tree tree = Tree.empty().whole("campaigns", question.campaigns()).whole("seed", question.seed())
                .tree("errorRate", share(answer.errorRate()).number("asked", errorRate))
                .tree("power", share(answer.power()).number("gain", question.truth().gain()))
                .tree("coverage", share(answer.coverage()).number("asked", 1 - errorRate))
                .tree("noChange", tally(answer.noChange()))
                .tree("withGain", tally(answer.withGain()));
        tree.trees("looks", IntStream.range(0, question.looks().size()).boxed().toList(), (look, k) -> look
                .whole("afterInstalls", question.looks().get(k).afterInstalls()).number("level", question.looks().get(k).level())
                .whole("endedWithoutChange", answer.noChange().stoppedAt().get(k))
                .whole("endedWithGain", answer.withGain().stoppedAt().get(k)));
        return tree.texts("warnings", warnings).document();
    }

    private static Tree share(Share share) {
        return Tree.empty().number("value", share.value()).number("standardError", share.standardError());
    }

    private static Tree tally(Tally tally) {
        return Tree.empty().whole("gain", tally.gain()).whole("loss", tally.loss()).whole("noDifferenceThatMatters", tally.noDifference())
                .whole("undecided", tally.undecided()).whole("cannotBeJudged", tally.notJudged());
    }
}

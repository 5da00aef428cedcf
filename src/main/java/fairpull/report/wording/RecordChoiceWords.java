package fairpull.report.wording;

import fairpull.domain.rig.Layer;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.StartingGuess;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which scatter a new plan takes, and where it is from. */
public final class RecordChoiceWords {
    private RecordChoiceWords() {
    }

    /** {@return what was taken from a matching record} */
    public static List<String> taken(RigEvidence evidence) {
        List<String> sentences = new ArrayList<>();
        sentences.add("Rig record used: " + RigWords.key(evidence.key()) + ".");
        for (Layer layer : List.of(Layer.PULL, Layer.REFIT)) {
            sentences.add(evidence.of(layer)
                    .map(known -> (layer == Layer.PULL ? "Pull scatter " : "Refit scatter "
                            + "") + RigWords.percent(known.share()) + " of the expected level, "
                            + Numbers.withDegreesOfFreedom(known.degreesOfFreedom()))
                    .orElse("It does not tell " + RigWords.layer(layer) + " scatter, which the test judges by its own data") + ".");
        }
        evidence.change().filter(RigEvidence.Change::looksChanged).ifPresent(change -> sentences.add("Careful: the rig looks changed from "
                + "session " + change.fromSession() + " on (" + Numbers.p(change.pValue()) + ")."));
        return sentences;
    }

    /** {@return why no record was taken: how the nearest ones differ} */
    public static String noneMatches(RigKey wanted, List<RigEvidence> others) {
        String nearest = others.stream()
                .sorted((one, other) -> Integer.compare(wanted.differences(one.key()).size(), wanted.differences(other.key()).size()))
                .limit(2)
                .map(other -> wanted.differences(other.key()).stream().map(part -> RigWords.part(part, other.key()))
                        .collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; "));
        return "no rig record matches " + RigWords.key(wanted)
                + (nearest.isEmpty() ? " (the folder holds none)" : " (the nearest are of " + nearest + ")");
    }

    /** {@return what a starting guess is} */
    public static String guessed(StartingGuess guess) {
        return "Starting guess used: pull scatter " + RigWords.percent(guess.pullShare()) + " and refit scatter "
                + RigWords.percent(guess.refitShare()) + " of the expected level, " + Numbers.withDegreesOfFreedom(guess.degreesOfFreedom())
                + ". It is engineering judgement with no source: replace it by a record of your own rig (fairpull rig add).";
    }
}

package fairpull.app.usecase.planning;

import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.typing.Typed;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Scatter;
import fairpull.domain.rig.Layer;
import fairpull.domain.rig.RigEvidence;
import fairpull.domain.rig.RigEvidence.Pooled;
import fairpull.domain.rig.RigKey;
import fairpull.domain.rig.RigRecord;
import fairpull.domain.rig.StartingGuess;
import fairpull.engine.rig.RigSummary;
import fairpull.io.record.RecordFolder;
import fairpull.report.wording.RecordChoiceWords;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The scatter figures of a new plan, each with its origin.
 *
 * @param pull pull scatter, where there is a figure
 * @param refit refit scatter, where there is a figure
 * @param said where they are from, in sentences; empty where they were typed in
 */
record PlanScatter(Optional<Scatter> pull, Optional<Scatter> refit, List<String> said) {
    /** {@return the figures that a request names: a matching record, a starting guess, or what was typed in} */
    static PlanScatter of(NewPlan.RigTyped rig, Measure deciding, OptionalDouble levelSi, OptionalDouble bandwidthRadPerS,
            boolean unstrapped) throws IOException {
        boolean asked = rig.records() != null || rig.startingGuess();
        if (!asked) {
            Typed typed = new Typed(deciding, levelSi);
            return new PlanScatter(typed.scatter("--pull-scatter", rig.pullScatter(), "--pull-df", rig.pullDf()),
                    typed.scatter("--refit-scatter", rig.refitScatter(), "--refit-df", rig.refitDf()), List.of());
        }
        String option = rig.records() != null ? "--record" : "--starting-guess";
        refuseTyped(option, rig);
        double level = levelSi.orElseThrow(() -> new UsageException(option, new Remedy(
                "its figures are percentages of the level; give --expected, such as --expected 190hp",
                "its figures are percentages of the level: give the expected level on the page Question")));
        return rig.records() == null ? guessed(rig, deciding, level)
                : recorded(rig, RigKey.of(rig.name(), deciding, bandwidthRadPerS, unstrapped), deciding, level);
    }

    private static void refuseTyped(String option, NewPlan.RigTyped rig) {
        boolean typed = rig.pullScatter() != null || rig.pullDf() != null || rig.refitScatter() != null || rig.refitDf() != null;
        if (typed) {
            throw new UsageException(option, "contradicts a scatter that is typed in; leave " + option
                    + " out, or --pull-scatter, --pull-df, --refit-scatter and --refit-df");
        }
    }

    private static PlanScatter recorded(NewPlan.RigTyped rig, RigKey key, Measure deciding, double level) throws IOException {
        List<RigRecord> records = RecordFolder.open(rig.records()).records();
        Optional<RigEvidence> found = RigSummary.matching(key, records);
        if (found.isPresent()) {
            return new PlanScatter(scatter(found.get().of(Layer.PULL), level), scatter(found.get().of(Layer.REFIT), level),
                    RecordChoiceWords.taken(found.get()));
        }
        String problem = RecordChoiceWords.noneMatches(key, RigSummary.all(records));
        if (!rig.startingGuess()) {
            throw new InputException(Place.of(rig.records().toString()), problem, new Remedy(
                    "leave --record out to judge by the test's own data, add --starting-guess for a labelled guess, or add baselines of "
                            + "this kind with `fairpull rig add`",
                    "take another source of scatter, or add baselines of this kind to the record"));
        }
        PlanScatter guessed = guessed(rig, deciding, level);
        String sentence = Character.toUpperCase(problem.charAt(0)) + problem.substring(1) + ".";
        return new PlanScatter(guessed.pull(), guessed.refit(), List.of(sentence, guessed.said().get(0)));
    }

    private static Optional<Scatter> scatter(Optional<Pooled> pooled, double level) {
        return pooled.map(known -> new Scatter(known.share() * level, known.degreesOfFreedom(), Scatter.Origin.RIG_RECORD));
    }

    private static PlanScatter guessed(NewPlan.RigTyped rig, Measure deciding, double level) {
        StartingGuess guess = StartingGuess.of(deciding.definition().quantity(), rig.kind()).orElseThrow(() -> new UsageException(
                "--starting-guess", "there is a guess only for power and torque on rollers, hubs and engine benches; type a scatter in, or "
                + "judge by the test's own data"));
        return new PlanScatter(Optional.of(new Scatter(guess.pullShare() * level, guess.degreesOfFreedom(), Scatter.Origin.STARTING_GUESS)),
                Optional.of(new Scatter(guess.refitShare() * level, guess.degreesOfFreedom(), Scatter.Origin.STARTING_GUESS)),
                List.of(RecordChoiceWords.guessed(guess)));
    }
}

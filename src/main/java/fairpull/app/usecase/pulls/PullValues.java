package fairpull.app.usecase.pulls;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Definition;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Channels;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.Mapping;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import fairpull.engine.curve.DrivenPower;
import fairpull.engine.curve.MeasureValue;
import fairpull.engine.curve.Outcome;
import fairpull.io.folder.TestFolder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The values of a pull: out of its export by the mapping it was taken with, or as they were typed. */
public final class PullValues {
    private PullValues() {
    }

    /** {@return the values that some channels hold, in SI by name of the measure; a measure without a value is left out} */
    static Map<String, Double> of(Channels channels, Plan plan) {
        return of(outcomes(channels, plan));
    }

    /** {@return what comes of every measure of a plan, in its order} */
    static Map<Measure, Outcome> outcomes(Channels channels, Plan plan) {
        Channels driven = driven(channels, plan);
        Map<Measure, Outcome> outcomes = new LinkedHashMap<>();
        plan.question().measures().forEach(measure ->
                outcomes.put(measure, MeasureValue.of(driven, measure.definition(), plan.curve())));
        return outcomes;
    }

    /** {@return the values among some outcomes, in SI by name of the measure} */
    static Map<String, Double> of(Map<Measure, Outcome> outcomes) {
        Map<String, Double> values = new TreeMap<>();
        outcomes.forEach((measure, outcome) -> outcome.match(found -> Optional.of(found.si()), missing -> Optional.<Double>empty())
                .ifPresent(si -> values.put(measure.name(), si)));
        return values;
    }

    /** {@return what is not certain about the values: which of several runs counts} */
    static List<String> doubts(Map<Measure, Outcome> outcomes) {
        List<String> doubts = new ArrayList<>();
        outcomes.forEach((measure, outcome) -> {
            int runs = outcome.match(Outcome.Value::runs, missing -> 1);
            if (runs > 1) {
                doubts.add(measure.name() + ": the first of " + runs + " runs in the file counts");
            }
        });
        return doubts;
    }

    /** Refuses an export that has no value of the deciding measure, unless that is typed by hand. */
    static void checkDeciding(Map<Measure, Outcome> outcomes, Plan plan, String file, Remedy remedy) {
        Measure deciding = plan.question().deciding();
        if (deciding.definition() instanceof Definition.Typed) {
            return;
        }
        String reason = outcomes.get(deciding).match(found -> "", PullValues::reason);
        if (!reason.isEmpty()) {
            throw new InputException(Place.of(file), "no value of " + deciding.name() + ": " + reason, remedy);
        }
    }

    /** {@return the channels; where the rig is told what a pull accelerates and the pull has no power, that is computed first} */
    static Channels driven(Channels channels, Plan plan) {
        return plan.rig().movingMass().map(mass -> DrivenPower.added(channels, mass)).orElse(channels);
    }

    /** {@return whether a correction for air applies to a measure} */
    public static boolean canBeCorrected(Measure measure) {
        return measure.unit().quantity() == Quantity.POWER || measure.unit().quantity() == Quantity.TORQUE;
    }

    /** {@return what the value of a measure is corrected to as it came in; empty: not known} */
    static Optional<Correction> inHand(List<Mapping> mappings, LogEntry.PullTaken taken, Measure measure) {
        boolean typed = taken.file().isEmpty() || measure.definition() instanceof Definition.Typed;
        return typed ? taken.corrected() : mapping(mappings, taken).corrected();
    }

    /** {@return the mapping that a pull was taken with} */
    static Mapping mapping(List<Mapping> mappings, LogEntry.PullTaken taken) {
        Optional<Mapping> same = mappings.stream().filter(known -> TestFolder.sha256(known).equals(taken.mappingSha256())).findFirst();
        return same.or(() -> mappings.stream().filter(known -> known.fingerprint().equals(taken.mapping())).reduce((first, last) -> last))
                .orElseThrow(() -> new InputException(Place.of("mapping.json"), "no mapping for " + taken.file(),
                        "restore mapping.json from a copy"));
    }

    private static String reason(Outcome.Missing missing) {
        String channel = missing.channel().words();
        return switch (missing.reason()) {
            case CHANNEL_ABSENT -> "no column for " + channel;
            case NO_SWEEP -> "no run of rising engine speed in it, at full throttle where it has the throttle";
            case NOTHING_SCORED -> "nothing of the sweep is left between tip-in and lift-off as the plan drops them";
            case NO_PEDAL_STEP -> "the pedal never steps from below half to full within half a second";
            case NO_RESPONSE -> "after the pedal step it never rises through the share asked for";
            case BAND_NOT_COVERED -> "the sweep does not cover the band" + coverage(missing);
            case SPEED_NOT_COVERED -> "the sweep does not reach that engine speed" + coverage(missing);
            case SPEEDS_NOT_PASSED -> "no run from below the first speed up to the second" + coverage(missing);
            case TIME_NOT_RISING -> "a time stamp is not later than the one before it";
            case TYPED_BY_HAND -> "it is typed by hand";
        };
    }

    private static String coverage(Outcome.Missing missing) {
        Unit unit = missing.channel() == Quantity.ENGINE_SPEED ? Units.RPM : Units.KM_PER_HOUR;
        return missing.covered()
                .map(range -> String.format(Locale.ROOT, ", it runs from %.0f to %.0f %s", unit.fromSi(range.lowSi()),
                        unit.fromSi(range.highSi()), unit.symbol()))
                .orElse("");
    }
}

package fairpull.app.usecase.pulls;

import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.finding.PullCorrection;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import fairpull.domain.plan.Plan;
import fairpull.domain.pull.LogEntry;
import fairpull.domain.pull.PullId;
import fairpull.io.folder.TestFolder;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The values of pulls, brought to the plan's standard by the air at each. */
final class BroughtValues {
    private static final String HOLD = " (barometer, and humidity noted with its intake air, then hold for the later pulls of the session)";
    /** So many commands are written out where readings are missing; the rest is counted. */
    private static final int SPELT_OUT = 3;

    private final TestFolder.Content content;
    private final Plan plan;
    private final CarriedAir air;
    private final Map<PullId, Double> multipliers = new HashMap<>();
    private final Map<PullId, Set<Condition>> missing = new LinkedHashMap<>();
    private final Set<String> cameIn = new LinkedHashSet<>();

    BroughtValues(TestFolder.Content content) {
        this.content = content;
        this.plan = content.plan();
        this.air = new CarriedAir(plan.sequence(), content.log());
    }

    /**
     * {@return values in the unit of each measure} A used pull must be brought to the plan's standard, and what it lacks for that is kept
     * for {@link #refuseMissing}; of one that is left out, what cannot be brought is left out too.
     */
    Map<String, Double> of(LogEntry.PullTaken taken, Map<String, Double> si, boolean used) {
        Map<String, Double> values = new TreeMap<>();
        for (Measure measure : plan.question().measures()) {
            if (si.containsKey(measure.name())) {
                multiplier(taken, measure, used).ifPresent(multiplier -> values.put(measure.name(),
                        measure.unit().fromSi(si.get(measure.name()) * multiplier)));
            }
        }
        return values;
    }

    private OptionalDouble multiplier(LogEntry.PullTaken taken, Measure measure, boolean used) {
        Optional<Correction> inHand = PullValues.inHand(content.mappings(), taken, measure);
        if (!PulledAir.isNeeded(measure, inHand)) {
            return OptionalDouble.of(1);
        }
        PulledAir here = air.at(taken.pull());
        OptionalDouble multiplier = used ? required(here, inHand.get(), measure.correction())
                : here.multiplierIfKnown(inHand.get(), measure.correction());
        if (measure.equals(plan.question().deciding())) {
            multiplier.ifPresent(known -> multipliers.put(taken.pull(), known));
        }
        return multiplier;
    }

    private OptionalDouble required(PulledAir here, Correction from, Correction to) {
        PulledAir.refuseWithoutFuel(Place.of("log.jsonl"), here.pull(), from, to);
        List<Condition> lacking = here.missing(from, to);
        if (!lacking.isEmpty()) {
            cameIn.add("the plan wants " + to.id() + ", values came in " + (from == Correction.NONE ? "as measured"
                    : "corrected to " + from.id()));
            missing.computeIfAbsent(here.pull(), pull -> EnumSet.noneOf(Condition.class)).addAll(lacking);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(here.multiplier(from, to));
    }

    /** Refuses a test whose used pulls lack readings: all of them in one line, with what to type. */
    void refuseMissing() {
        if (missing.isEmpty()) {
            return;
        }
        Map<Condition, String> pulls = new EnumMap<>(Condition.class);
        missing.forEach((pull, lacking) -> lacking.forEach(one -> pulls.merge(one, pull.toString(), (some, more) -> some + ", " + more)));
        String what = pulls.entrySet().stream().map(entry -> entry.getKey().words() + " at " + entry.getValue())
                .collect(Collectors.joining("; "));
        int more = missing.size() - SPELT_OUT;
        String commands = missing.entrySet().stream().limit(SPELT_OUT).map(BroughtValues::command).collect(Collectors.joining("; "));
        throw new InputException(Place.of("log.jsonl"), String.join("; ", cameIn) + ", and no reading is noted of " + what,
                new Remedy("note them: " + commands + (more > 0 ? "; likewise for " + more + " more" : "") + HOLD,
                    "paste a table with these pulls and their readings on the page Pulls" + HOLD));
    }

    private static String command(Map.Entry<PullId, Set<Condition>> lacking) {
        return "fairpull note FOLDER " + lacking.getKey() + lacking.getValue().stream().map(one -> " --condition " + one.id() + "=…")
                .collect(Collectors.joining());
    }

    /** {@return what the air at a pull makes of its deciding measure; empty where the plan has no correction or the air is not known} */
    Optional<PullCorrection> correction(PullId pull) {
        Measure deciding = plan.question().deciding();
        if (!PulledAir.concerns(deciding) || deciding.correction() == Correction.NONE) {
            return Optional.empty();
        }
        PulledAir here = air.at(pull);
        OptionalDouble factor = here.multiplierIfKnown(Correction.NONE, deciding.correction());
        Double multiplier = multipliers.get(pull);
        return factor.isEmpty() ? Optional.empty() : Optional.of(new PullCorrection(factor.getAsDouble(),
                multiplier == null ? OptionalDouble.empty() : OptionalDouble.of(multiplier), here.carried()));
    }
}

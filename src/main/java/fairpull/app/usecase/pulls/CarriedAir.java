package fairpull.app.usecase.pulls;

import fairpull.app.usecase.typing.ReadingCheck;
import fairpull.domain.finding.PullCorrection.Carried;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Sequence;
import fairpull.domain.plan.Session;
import fairpull.domain.pull.DayLog;
import fairpull.domain.pull.PlannedClock;
import fairpull.domain.pull.PullId;
import fairpull.engine.air.Vapour;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The air at every planned pull. Barometer and humidity hold from the pull where they were noted until the next reading of the session;
 * intake air changes from pull to pull and is never carried. Humidity is carried as vapour pressure, at the intake air noted beside it:
 * air that warms in the bay keeps its vapour, while its relative humidity falls.
 */
final class CarriedAir {
    private final DayLog log;
    private final Map<PullId, Double> planned;
    private final Map<PullId, PulledAir> air = new HashMap<>();

    CarriedAir(Sequence sequence, DayLog log) {
        this.log = log;
        this.planned = PlannedClock.of(sequence).minutes();
        sequence.sessions().forEach(this::follow);
    }

    /** {@return the air at a pull; of one that is not planned, what was noted at it} */
    PulledAir at(PullId pull) {
        return air.getOrDefault(pull, new PulledAir(pull, log.conditionsAt(pull), Optional.empty()));
    }

    private void follow(Session session) {
        Map<Condition, Reading> held = new EnumMap<>(Condition.class);
        session.installs().stream().flatMap(install -> PlannedClock.pullsOf(install).stream())
                .forEach(pull -> air.put(pull, next(pull, held)));
    }

    private PulledAir next(PullId pull, Map<Condition, Reading> held) {
        Map<Condition, Double> readings = log.conditionsAt(pull);
        Optional<Carried> oldest = Optional.empty();
        for (Condition condition : new Condition[] {Condition.BAROMETER, Condition.HUMIDITY}) {
            if (readings.containsKey(condition)) {
                held.put(condition, new Reading(pull, readings.get(condition), readings.get(Condition.INTAKE_AIR)));
                continue;
            }
            Reading reading = held.get(condition);
            Optional<Carried> age = reading == null ? Optional.empty() : age(reading.pull(), pull);
            Optional<Double> value = age.flatMap(known -> reading.at(condition, readings.get(Condition.INTAKE_AIR)));
            value.ifPresent(si -> readings.put(condition, si));
            if (value.isPresent() && (oldest.isEmpty() || age.get().minutes() > oldest.get().minutes())) {
                oldest = age;
            }
        }
        return new PulledAir(pull, readings, oldest);
    }

    /** {@return how long before a pull another one was; empty where the day's clock says that it was later} */
    private Optional<Carried> age(PullId noted, PullId pull) {
        Optional<OffsetDateTime> from = log.startOf(noted);
        Optional<OffsetDateTime> to = log.startOf(pull);
        boolean byPlan = from.isEmpty() || to.isEmpty();
        double minutes = byPlan ? planned.get(pull) - planned.get(noted) : Duration.between(from.get(), to.get()).toSeconds() / 60.0;
        return minutes < 0 ? Optional.empty() : Optional.of(new Carried(minutes, byPlan));
    }

    /**
     * A reading where it was noted.
     *
     * @param intakeAirK the intake air beside it; null where it was not noted
     */
    private record Reading(PullId pull, double si, Double intakeAirK) {
        /** {@return the reading in another intake air; empty for a humidity of which it is not known in what air it was read} */
        Optional<Double> at(Condition condition, Double otherK) {
            if (condition != Condition.HUMIDITY || otherK == null) {
                return Optional.of(si);
            }
            return Optional.ofNullable(intakeAirK)
                    .filter(kelvin -> si <= 1 && ReadingCheck.canBeAir(kelvin) && ReadingCheck.canBeAir(otherK))
                    .map(kelvin -> Math.min(1, si * Vapour.saturationPressure(kelvin) / Vapour.saturationPressure(otherK)));
        }
    }
}

package fairpull.app.usecase.pulls;

import fairpull.app.usecase.typing.ReadingCheck;
import fairpull.domain.InputException;
import fairpull.domain.InputException.Place;
import fairpull.domain.Remedy;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirState;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.finding.PullCorrection.Carried;
import fairpull.domain.plan.Condition;
import fairpull.domain.plan.Correction;
import fairpull.domain.plan.Measure;
import fairpull.domain.pull.PullId;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Units;
import fairpull.engine.air.Air;
import fairpull.engine.air.Factor;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air at one pull, and what it makes of the pull's values.
 *
 * @param pull which one
 * @param conditionsSi everything noted at it, and what was carried to it
 * @param carried the age of the oldest reading carried to it; empty where none was
 */
record PulledAir(PullId pull, Map<Condition, Double> conditionsSi, Optional<Carried> carried) {

    /** {@return whether a correction for air means anything for a measure} */
    static boolean concerns(Measure measure) {
        return measure.unit().quantity() == Quantity.POWER || measure.unit().quantity() == Quantity.TORQUE;
    }

    /** {@return whether a value in hand has to be brought to the plan's standard; not where nobody knows what it is corrected to} */
    static boolean isNeeded(Measure measure, Optional<Correction> inHand) {
        return concerns(measure) && inHand.isPresent() && inHand.get() != measure.correction();
    }

    /**
     * {@return what a value corrected by one standard is multiplied by to be corrected by another}
     *
     * @throws InputException if a reading cannot be, or a standard needs more than air
     * @throws NullPointerException if a reading is {@link #missing}
     */
    double multiplier(Correction from, Correction to) {
        AirState air = state(from, to);
        return Factor.of(Standard.plain(to), air) / Factor.of(Standard.plain(from), air);
    }

    /** {@return the same; empty where the log does not say enough, or what cannot be} */
    OptionalDouble multiplierIfKnown(Correction from, Correction to) {
        if (!missing(from, to).isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(multiplier(from, to));
        } catch (InputException unknown) {
            return OptionalDouble.empty();
        }
    }

    private AirState state(Correction from, Correction to) {
        refuseWithoutFuel(Place.of("log.jsonl"), pull, from, to);
        ReadingCheck check = new ReadingCheck(Place.of("log.jsonl, pull " + pull));
        double kelvin = check.temperature(noted(Condition.INTAKE_AIR));
        double pascal = check.pressure(noted(Condition.BAROMETER));
        Humidity humidity = conditionsSi.containsKey(Condition.HUMIDITY)
                ? new Humidity.Relative(check.humidity(noted(Condition.HUMIDITY))) : new Humidity.NotRead();
        return Air.at(new AirReading(kelvin, Barometer.station(pascal), humidity));
    }

    /** Refuses what no air can do: the exponent of iso-1585-ci follows fuel and boost, which change through a pull. */
    static void refuseWithoutFuel(Place place, PullId pull, Correction from, Correction to) {
        if (from == Correction.ISO_1585_CI || to == Correction.ISO_1585_CI) {
            throw new InputException(place, "pull " + pull + " would have to be brought from " + from.id() + " to " + to.id()
                    + ", and iso-1585-ci needs fuel rate and boost at every speed beside the air", to == Correction.ISO_1585_CI
                    ? new Remedy("export it corrected to iso-1585-ci and import it with --corrected iso-1585-ci, or plan with no "
                            + "correction",
                            "export it corrected to iso-1585-ci and say so when it comes in, or plan with no correction")
                    : new Remedy("export it as measured and import it with --corrected none",
                            "export it as measured and say so when it comes in"));
        }
    }

    /** {@return what has to be noted yet} */
    List<Condition> missing(Correction from, Correction to) {
        List<Condition> needed = new ArrayList<>(List.of(Condition.INTAKE_AIR, Condition.BAROMETER));
        if (Factor.usesHumidity(from) || Factor.usesHumidity(to)) {
            needed.add(Condition.HUMIDITY);
        }
        needed.removeAll(conditionsSi.keySet());
        return needed;
    }

    private Amount noted(Condition condition) {
        double si = conditionsSi.get(condition);
        return switch (condition) {
            case INTAKE_AIR -> new Amount(rounded(Units.CELSIUS.fromSi(si)), Units.CELSIUS);
            case BAROMETER -> new Amount(rounded(Units.HECTOPASCAL.fromSi(si)), Units.HECTOPASCAL);
            default -> new Amount(rounded(Units.PERCENT.fromSi(si)), Units.PERCENT);
        };
    }

    /** Readings went through SI: what was typed comes back without the noise of the last digits. */
    private static double rounded(double reading) {
        return Math.round(reading * 1e9) / 1e9;
    }
}

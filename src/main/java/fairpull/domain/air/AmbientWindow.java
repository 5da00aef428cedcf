package fairpull.domain.air;

import java.util.List;
import java.util.Optional;

/**
 * The air in which pulls may run, and whether the present one is of it. Errors are relative to the level.
 *
 * @param allowedError what the correction may get wrong
 * @param limits within what the correction may be used
 * @param sensorError what sensors make of a comparison within the session, twice the standard uncertainty
 * @param modelError what the correction itself may get wrong by its change since the first install; 0 before there is one
 * @param obstacles why a pull must not start; none: go
 * @param temperatureK range of temperature with pressure and relative humidity as they are
 * @param pressurePa range of station pressure with the others as they are
 * @param humidity range of relative humidity with the others as they are
 * @param rows range of station pressure by temperature and humidity
 * @param change how far the air may move between the first and the last install
 * @param changeSoFar relative change of the factor since the first install, where that is known
 */
public record AmbientWindow(double allowedError, StandardLimits limits, double sensorError, double modelError, List<Obstacle> obstacles,
        Optional<Range> temperatureK, Optional<Range> pressurePa, Optional<Range> humidity, List<Row> rows, Optional<Change> change,
        Optional<Double> changeSoFar) {
    /** Why a pull must not start. */
    public enum Obstacle {
        /** Sensors alone use up what is allowed: better sensors, or a larger share. */
        SENSORS_TOO_COARSE,
        /** The air has moved too far since the first install. */
        MOVED_TOO_FAR,
        /** Outside the standard's range of temperature. */
        TEMPERATURE_OUTSIDE,
        /** Outside the standard's range of dry pressure. */
        DRY_PRESSURE_OUTSIDE,
        /** Outside the standard's range of the factor. */
        FACTOR_OUTSIDE
    }

    /** From where to where, both included. */
    public record Range(double low, double high) {
    }

    /**
     * One line of the table.
     *
     * @param temperatureK air temperature
     * @param humidity relative humidity
     * @param pressurePa range of station pressure; empty: at no pressure
     */
    public record Row(double temperatureK, double humidity, Optional<Range> pressurePa) {
    }

    /**
     * How far the air may move, each figure with the others unmoved.
     *
     * @param factor relative change of the factor
     * @param temperatureK change of temperature, relative humidity unmoved
     * @param pressurePa change of pressure
     * @param humidity change of relative humidity; infinite where the standard ignores it
     */
    public record Change(double factor, double temperatureK, double pressurePa, double humidity) {
    }

    public AmbientWindow {
        obstacles = List.copyOf(obstacles);
        rows = List.copyOf(rows);
    }

    /** {@return whether a pull may start now} */
    public boolean go() {
        return obstacles.isEmpty();
    }
}

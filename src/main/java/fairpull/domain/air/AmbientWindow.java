package fairpull.domain.air;

import java.util.List;
import java.util.Optional;

/**
 * The air in which pulls may run, and whether the present one is of it. Errors are relative to the level.
 *
 * @param question what was asked
 * @param limits within what the correction may be used
 * @param sensorError what sensors make of a comparison within the session, twice the standard uncertainty
 * @param modelError what the correction itself may get wrong by its change since the first install; 0 before there is one
 * @param obstacles why a pull must not start; none: go
 * @param ranges in what air a pull may start, each reading with the others as they are now
 * @param rows range of station pressure by temperature and humidity
 * @param change how far the air may move from that of the first install; empty: sensors leave nothing
 * @param changeSoFar relative change of the factor since the first install, where that is known
 */
public record AmbientWindow(WindowQuestion question, StandardLimits limits, double sensorError, double modelError,
        List<Obstacle> obstacles, Ranges ranges, List<Row> rows, Optional<Change> change, Optional<Double> changeSoFar) {
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
     * Ranges of three readings, each with the other two unmoved; empty: at none.
     *
     * @param temperatureK air temperature, the reading of humidity unmoved
     * @param pressurePa station pressure
     * @param humidity in the unit and kind in which it was read: a share, a dew point or a wet bulb in K; empty too where none was read
     */
    public record Ranges(Optional<Range> temperatureK, Optional<Range> pressurePa, Optional<Range> humidity) {
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
     * How far the air may move from that of the first install.
     *
     * @param factor relative change of the factor
     * @param ranges of the air at later installs, around the air of the first one; around the present air where there is no first yet
     */
    public record Change(double factor, Ranges ranges) {
    }

    public AmbientWindow {
        obstacles = List.copyOf(obstacles);
        rows = List.copyOf(rows);
    }

    /** {@return what the correction may get wrong} */
    public double allowedError() {
        return question.allowedError();
    }

    /** {@return whether a pull may start now} */
    public boolean go() {
        return obstacles.isEmpty();
    }
}

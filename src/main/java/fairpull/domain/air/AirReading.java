package fairpull.domain.air;

import java.util.Objects;

/**
 * Air as it was read beside a pull.
 *
 * @param temperatureK of the air that the engine breathes
 * @param barometer its pressure
 * @param humidity how moist it is
 */
public record AirReading(double temperatureK, Barometer barometer, Humidity humidity) {
    public AirReading {
        Objects.requireNonNull(barometer, "barometer");
        Objects.requireNonNull(humidity, "humidity");
        if (!(temperatureK > 0) || Double.isInfinite(temperatureK)) {
            throw new IllegalArgumentException("a temperature must be above 0 K, was " + temperatureK);
        }
    }
}

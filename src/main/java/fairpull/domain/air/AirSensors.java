package fairpull.domain.air;

/**
 * Standard uncertainties of what is read beside a pull.
 *
 * @param temperatureK of the air temperature
 * @param pressurePa of the barometer
 * @param relativeHumidity of relative humidity, as a share
 * @param dewPointK of a dew point or wet bulb
 * @param correlation of one sensor's errors between two pulls of a session, 0 to 1; across days there is none
 */
public record AirSensors(double temperatureK, double pressurePa, double relativeHumidity, double dewPointK, double correlation) {
    /** Starting guesses, engineering judgement with no source: a good weather station at the inlet, its errors mostly offsets. */
    public static final AirSensors STARTING_GUESS = new AirSensors(0.5, 100, 0.03, 0.5, 0.9);

    public AirSensors {
        if (!(temperatureK >= 0 && pressurePa >= 0 && relativeHumidity >= 0 && dewPointK >= 0)) {
            throw new IllegalArgumentException("an uncertainty must be 0 or more");
        }
        if (!(correlation >= 0 && correlation <= 1)) {
            throw new IllegalArgumentException("a correlation must lie between 0 and 1, was " + correlation);
        }
    }
}

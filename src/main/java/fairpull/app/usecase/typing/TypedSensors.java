package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.air.AirSensors;
import fairpull.domain.unit.Amount;
import fairpull.domain.unit.Quantity;
import java.util.Optional;

/**
 * Standard uncertainties of sensors as they are typed; where one is not, a starting guess stands.
 *
 * @param temperature of the thermometer
 * @param pressure of the barometer
 * @param humidity of relative humidity, in percent points
 * @param dewPoint of a dew point or wet bulb
 * @param correlation of one sensor's errors between two pulls of a session
 */
public record TypedSensors(Optional<String> temperature, Optional<String> pressure, Optional<String> humidity, Optional<String> dewPoint,
        Optional<String> correlation) {

    /** {@return the sensors} */
    public AirSensors sensors() {
        AirSensors guess = AirSensors.STARTING_GUESS;
        return new AirSensors(
                temperature.map(text -> size("--temperature-uncertainty", text, Quantity.TEMPERATURE, "0.5K")).orElse(guess.temperatureK()),
                pressure.map(text -> size("--pressure-uncertainty", text, Quantity.PRESSURE, "1hPa")).orElse(guess.pressurePa()),
                humidity.map(TypedSensors::points).orElse(guess.relativeHumidity()),
                dewPoint.map(text -> size("--dew-point-uncertainty", text, Quantity.TEMPERATURE, "0.5K")).orElse(guess.dewPointK()),
                correlation.map(TypedSensors::share).orElse(guess.correlation()));
    }

    /** {@return whether any figure is a starting guess} */
    public boolean guessed() {
        return temperature.isEmpty() || pressure.isEmpty() || humidity.isEmpty() && dewPoint.isEmpty() || correlation.isEmpty();
    }

    private static double size(String option, String text, Quantity quantity, String example) {
        double size = ReadingCheck.typed(option, text, quantity, example).differenceSi();
        if (size < 0) {
            throw new UsageException(option, "must be 0 or more, was " + text);
        }
        return size;
    }

    private static double points(String text) {
        double share = ReadingCheck.percent("--humidity-uncertainty", text, "3%").si();
        if (share < 0 || share > 1) {
            throw new UsageException("--humidity-uncertainty", "must lie between 0 and 100 %, was " + text);
        }
        return share;
    }

    private static double share(String text) {
        return Amount.parse(text).filter(amount -> amount.unit().quantity() == Quantity.FRACTION && amount.si() >= 0 && amount.si() <= 1)
                .orElseThrow(() -> new UsageException("--correlation", "expected a number between 0 and 1, found “" + text + "”")).si();
    }
}

package fairpull.demo;

import fairpull.domain.pull.PullId;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One invented test day before anything is drawn.
 *
 * @param folder where its files go inside {@code demo-data}
 * @param seed fixes everything that is drawn
 * @param curve the engine
 * @param sweep how a pull is driven
 * @param order the installs, such as {@code ABABA}
 * @param warmUps pulls before the counted ones of each install
 * @param pulls counted pulls of each install
 * @param scatter what moves a pull off the curve
 * @param clock when things happen
 * @param weather the air at the start of the day
 * @param form how the exports are written
 * @param aborted a counted pull that was first lifted off half-way and then repeated
 */
record Scenario(String folder, long seed, TorqueCurve curve, Driving sweep, String order, int warmUps, int pulls, Scatter scatter, Clock clock,
        Weather weather, ExportForm form, Optional<PullId> aborted) {

    /**
     * What moves a whole pull off the curve, as shares of its torque.
     *
     * @param pull standard deviation from pull to pull
     * @param refit standard deviation from install to install
     * @param driftPerMinute change with the clock, from the first counted pull on
     */
    record Scatter(double pull, double refit, double driftPerMinute) {
    }

    /**
     * The clock of the day, in whole minutes.
     *
     * @param start the first warm-up pull
     * @param interval from pull to pull
     * @param swap more at each swap
     */
    record Clock(OffsetDateTime start, int interval, int swap) {
    }

    /**
     * The air at the start of the day: in the room, at the station, relative humidity.
     */
    record Weather(double intakeAirC, double barometerHPa, double humidityPercent) {
    }

    /**
     * How a pull is driven.
     *
     * @param fromRpm engine speed at part throttle before the pull
     * @param liftRpm where the driver lifts off
     * @param rpmPerSecond rise of engine speed at peak torque
     * @param kmhPerRpm roller speed over engine speed
     */
    record Driving(double fromRpm, double liftRpm, double rpmPerSecond, double kmhPerRpm) {
        Driving liftingAt(double rpm) {
            return new Driving(fromRpm, rpm, rpmPerSecond, kmhPerRpm);
        }
    }
}

package fairpull.engine.air;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AirState;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Change;
import fairpull.domain.air.AmbientWindow.Obstacle;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.AmbientWindow.Row;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.air.StandardLimits;
import fairpull.domain.air.WindowQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * The air in which the correction errs by no more than is allowed in a comparison of two parts on one day.
 *
 * <p>Two errors are added. Sensors: twice the standard uncertainty of the ratio of two factors of one session in the same air
 * ({@link FactorError#ratioTo}). The correction itself: a stated share m of its change since the first install, m·|ln(f/f₁)|; what it
 * gets wrong in the air of both parts cancels, however far that air is from reference air. A pull may start where the sum stays
 * within what is allowed and the standard's own limits hold. The rule is the program's own, engineering judgement with no source.
 */
public final class WindowSearch {
    private static final double COVERAGE = 2;
    private static final Range TEMPERATURES = new Range(Celsius.ZERO - 20, Celsius.ZERO + 50);
    private static final Range PRESSURES = new Range(60_000, 110_000);
    private static final Range HUMIDITIES = new Range(0, 1);
    private static final int SCAN = 1000;
    private static final int HALVINGS = 40;
    private static final int[] ROW_TEMPERATURES = {5, 10, 15, 20, 25, 30, 35, 40};
    private static final double[] ROW_HUMIDITIES = {0.2, 0.5, 0.8};

    private final Standard standard;
    private final WindowQuestion question;
    private final AirSensors sensors;
    private final StandardLimits limits;
    private final Optional<Double> first;

    private WindowSearch(Standard standard, WindowQuestion question, AirSensors sensors) {
        this.standard = standard;
        this.question = question;
        this.sensors = sensors;
        StandardLimits own = Factor.limits(standard.correction());
        this.limits = question.factors().map(range -> own.withFactors(range.low(), range.high())).orElse(own);
        this.first = question.first().map(reading -> Factor.of(standard, Air.at(reading)));
    }

    /**
     * Finds the window.
     *
     * @param standard the correction
     * @param question what is allowed, and the air
     * @param sensors standard uncertainties of the readings
     * @return the window, and whether the present air is within it
     */
    public static AmbientWindow window(Standard standard, WindowQuestion question, AirSensors sensors) {
        return new WindowSearch(standard, question, sensors).window();
    }

    private AmbientWindow window() {
        AirState now = Air.at(question.now());
        double temperature = now.temperatureK();
        double pressure = now.pressurePa();
        double humidity = Math.min(1, now.vapourPressurePa() / Vapour.saturationPressure(temperature));
        return new AmbientWindow(question.allowedError(), limits, sensorError(question.now()), modelError(Factor.of(standard, now)),
                obstacles(now),
                range(TEMPERATURES, kelvin -> allows(kelvin, pressure, humidity)),
                range(PRESSURES, pascal -> allows(temperature, pascal, humidity)),
                range(HUMIDITIES, share -> allows(temperature, pressure, share)),
                rows(), change(reading(temperature, pressure, humidity)), first.map(factor -> Factor.of(standard, now) / factor - 1));
    }

    private List<Obstacle> obstacles(AirState now) {
        List<Obstacle> obstacles = new ArrayList<>();
        double factor = Factor.of(standard, now);
        double left = left();
        add(obstacles, !limits.holdsTemperature(now.temperatureK()), Obstacle.TEMPERATURE_OUTSIDE);
        add(obstacles, !limits.holdsDryPressure(now.dryPressurePa()), Obstacle.DRY_PRESSURE_OUTSIDE);
        add(obstacles, !limits.holdsFactor(factor), Obstacle.FACTOR_OUTSIDE);
        add(obstacles, left < 0, Obstacle.SENSORS_TOO_COARSE);
        add(obstacles, left >= 0 && modelError(factor) > left, Obstacle.MOVED_TOO_FAR);
        return obstacles;
    }

    private static void add(List<Obstacle> obstacles, boolean applies, Obstacle obstacle) {
        if (applies) {
            obstacles.add(obstacle);
        }
    }

    /** {@return what the sensors leave to the correction itself} */
    private double left() {
        return question.allowedError() - sensorError(question.now());
    }

    private double sensorError(AirReading reading) {
        FactorError error = FactorError.of(standard, reading, sensors);
        return COVERAGE * error.ratioTo(error, sensors.correlation());
    }

    /** {@return what the correction itself may get wrong between the first install and a factor; nothing before there is one} */
    private double modelError(double factor) {
        return first.map(before -> question.modelError() * Math.abs(Math.log(factor / before))).orElse(0.0);
    }

    private boolean allows(double temperatureK, double pressurePa, double humidity) {
        AirReading reading = reading(temperatureK, pressurePa, humidity);
        AirState air = Air.at(reading);
        double factor = Factor.of(standard, air);
        return limits.hold(air, factor) && sensorError(reading) + modelError(factor) <= question.allowedError();
    }

    private static AirReading reading(double temperatureK, double pressurePa, double humidity) {
        return new AirReading(temperatureK, Barometer.station(pressurePa), new Humidity.Relative(humidity));
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int celsius : ROW_TEMPERATURES) {
            double kelvin = celsius + Celsius.ZERO;
            if (limits.holdsTemperature(kelvin)) {
                for (double humidity : ROW_HUMIDITIES) {
                    rows.add(new Row(kelvin, humidity, range(PRESSURES, pascal -> allows(kelvin, pascal, humidity))));
                }
            }
        }
        return rows;
    }

    private Optional<Change> change(AirReading now) {
        double left = left();
        if (left <= 0) {
            return Optional.empty();
        }
        double factor = left / question.modelError();
        FactorError error = FactorError.of(standard, now, sensors);
        return Optional.of(new Change(factor, factor / Math.abs(error.perKelvin()), factor / Math.abs(error.perPascal()),
                factor / Math.abs(error.perHumidity())));
    }

    /** {@return the first stretch that is allowed, its ends found by halving; what is allowed is one stretch, as the factor is monotone} */
    private static Optional<Range> range(Range within, DoublePredicate allowed) {
        double step = (within.high() - within.low()) / SCAN;
        double first = Double.NaN;
        double last = Double.NaN;
        for (int i = 0; i <= SCAN; i++) {
            double at = i == SCAN ? within.high() : within.low() + i * step;
            if (allowed.test(at)) {
                first = Double.isNaN(first) ? at : first;
                last = at;
            }
        }
        if (Double.isNaN(first)) {
            return Optional.empty();
        }
        return Optional.of(new Range(edge(first, Math.max(within.low(), first - step), allowed),
                edge(last, Math.min(within.high(), last + step), allowed)));
    }

    private static double edge(double inside, double outside, DoublePredicate allowed) {
        if (allowed.test(outside)) {
            return outside;
        }
        double good = inside;
        double bad = outside;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (good + bad) / 2;
            if (allowed.test(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return good;
    }
}

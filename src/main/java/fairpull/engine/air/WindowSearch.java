package fairpull.engine.air;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirSensors;
import fairpull.domain.air.AirState;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Change;
import fairpull.domain.air.AmbientWindow.Obstacle;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.AmbientWindow.Ranges;
import fairpull.domain.air.AmbientWindow.Row;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Standard;
import fairpull.domain.air.StandardLimits;
import fairpull.domain.air.WindowQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The air in which the correction errs by no more than is allowed in a comparison of two parts on one day.
 *
 * <p>Two errors are added. Sensors: twice the standard uncertainty of the ratio of two factors of one session
 * ({@link FactorError#ratioTo}), that of the first install and that of the pull, or twice the same air where there has been no first
 * install. The correction itself: a stated share m of its change since the first install, m·|f/f₁ − 1|; what it gets wrong in the air of
 * both parts cancels, however far that air is from reference air. A pull may start where the sum stays within what is allowed and the
 * standard's own limits hold. The rule is the program's own, engineering judgement with no source.
 *
 * <p>Every air is judged as it would be read: with the kind of barometer and hygrometer in hand, so that the present air is in every range
 * exactly when a pull may start.
 */
public final class WindowSearch {
    private static final double COVERAGE = 2;
    private static final Range TEMPERATURES = new Range(Celsius.ZERO - 20, Celsius.ZERO + 50);
    private static final Range PRESSURES = new Range(60_000, 110_000);
    private static final int[] ROW_TEMPERATURES = {5, 10, 15, 20, 25, 30, 35, 40};
    private static final double[] ROW_HUMIDITIES = {0.2, 0.5, 0.8};

    private final Standard standard;
    private final WindowQuestion question;
    private final AirSensors sensors;
    private final StandardLimits limits;
    private final Optional<First> first;

    /** The first install: its factor and the errors of that. */
    private record First(double factor, FactorError error) {
    }

    private WindowSearch(Standard standard, WindowQuestion question, AirSensors sensors) {
        this.standard = standard;
        this.question = question;
        this.sensors = sensors;
        StandardLimits own = Factor.limits(standard.correction());
        this.limits = question.factors().map(range -> own.withFactors(range.low(), range.high())).orElse(own);
        this.first = question.first().map(reading -> new First(factor(reading), FactorError.of(standard, reading, sensors)));
    }

    /**
     * Finds the window.
     *
     * @param standard the correction
     * @param question what is allowed, and the air
     * @param sensors standard uncertainties of the readings
     * @return the window, and whether the present air is within it
     * @throws IllegalArgumentException where no air could read so
     */
    public static AmbientWindow window(Standard standard, WindowQuestion question, AirSensors sensors) {
        return new WindowSearch(standard, question, sensors).window();
    }

    private AmbientWindow window() {
        AirReading now = question.now();
        double factor = factor(now);
        return new AmbientWindow(question, limits, sensorError(now), modelError(factor), obstacles(now), ranges(now), rows(), change(),
                first.map(before -> factor / before.factor() - 1));
    }

    private double factor(AirReading reading) {
        return Factor.of(standard, Air.at(reading));
    }

    private List<Obstacle> obstacles(AirReading reading) {
        List<Obstacle> obstacles = new ArrayList<>();
        AirState air = Air.at(reading);
        double factor = Factor.of(standard, air);
        double left = left(reading);
        add(obstacles, !limits.holdsTemperature(air.temperatureK()), Obstacle.TEMPERATURE_OUTSIDE);
        add(obstacles, !limits.holdsDryPressure(air.dryPressurePa()), Obstacle.DRY_PRESSURE_OUTSIDE);
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
    private double left(AirReading reading) {
        return question.allowedError() - sensorError(reading);
    }

    private double sensorError(AirReading reading) {
        FactorError error = FactorError.of(standard, reading, sensors);
        return COVERAGE * error.ratioTo(first.map(First::error).orElse(error), sensors.correlation());
    }

    /** {@return what the correction itself may get wrong between the first install and a factor; nothing before there is one} */
    private double modelError(double factor) {
        return first.map(before -> question.modelError() * Math.abs(factor / before.factor() - 1)).orElse(0.0);
    }

    private boolean allows(AirReading reading) {
        return Hygrometer.isPossible(reading) && obstacles(reading).isEmpty();
    }

    /** {@return the ranges of each reading with the others as in {@code air}} */
    private Ranges ranges(AirReading air) {
        double kelvin = air.temperatureK();
        Barometer barometer = air.barometer();
        Humidity humidity = air.humidity();
        Hygrometer hygrometer = new Hygrometer(humidity);
        return new Ranges(Stretch.around(TEMPERATURES, kelvin, other -> allows(new AirReading(other, barometer, humidity))),
                pressures(barometer, other -> new AirReading(kelvin, other, humidity)),
                humidity instanceof Humidity.NotRead ? Optional.empty() : Stretch.around(hygrometer.scale(kelvin),
                        Hygrometer.value(humidity), other -> allows(new AirReading(kelvin, barometer, hygrometer.reading(other)))));
    }

    private interface OtherPressure {
        AirReading at(Barometer barometer);
    }

    /** {@return the range of station pressures} */
    private Optional<Range> pressures(Barometer now, OtherPressure air) {
        return Stretch.around(PRESSURES, now.pressurePa(), pascal -> allows(air.at(now.reading(pascal))))
                .map(range -> new Range(Air.stationPressure(now.reading(range.low()), 0),
                        Air.stationPressure(now.reading(range.high()), 0)));
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        Hygrometer hygrometer = new Hygrometer(question.now().humidity());
        for (int celsius : ROW_TEMPERATURES) {
            double kelvin = celsius + Celsius.ZERO;
            if (limits.holdsTemperature(kelvin)) {
                for (double humidity : ROW_HUMIDITIES) {
                    rows.add(new Row(kelvin, humidity, pressures(question.now().barometer(), barometer -> new AirReading(kelvin, barometer,
                            hygrometer.at(humidity, kelvin, Air.stationPressure(barometer, 0))))));
                }
            }
        }
        return rows;
    }

    /** {@return how far the air may be from that of the first install, or from the present one were it that} */
    private Optional<Change> change() {
        double left = left(question.now());
        if (left <= 0) {
            return Optional.empty();
        }
        WindowSearch later = first.isPresent() ? this : new WindowSearch(standard, question.withFirst(question.now()), sensors);
        return Optional.of(new Change(left / question.modelError(), later.ranges(question.start())));
    }
}

package fairpull.engine.air;

import fairpull.domain.air.AirNotice;
import fairpull.domain.air.AirNotice.Code;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirState;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Standard;
import fairpull.domain.air.StandardLimits;
import fairpull.domain.plan.Correction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks for what may be wrong with a factor: the barometer, the humidity, the standard's limits, the engine. */
public final class AirReview {
    /** Humidity for which the error of forgetting it is stated. */
    private static final double ASSUMED_HUMIDITY = 0.5;
    /** Air drier than this does not occur in a shop; common practice, no source. */
    private static final double DRIEST = 0.02;
    /** Below this height weather alone moves the barometer as much as height does. */
    private static final double LEAST_ELEVATION = 100;
    /** Sea-level pressures that weather brings; common practice, no source. */
    private static final double LOWEST_SEA_LEVEL = 94_000;
    /** Air is rarely as hot as this in °C, and often in °F. */
    private static final double HOT = Celsius.ZERO + 45;

    private final Standard standard;
    private final AirReading reading;
    private final AirState air;
    private final double factor;
    private final List<AirNotice> notices = new ArrayList<>();

    private AirReview(Standard standard, AirReading reading) {
        this.standard = standard;
        this.reading = reading;
        this.air = Air.at(reading);
        this.factor = Factor.of(standard, air);
    }

    /**
     * Reviews a factor.
     *
     * @param standard the correction
     * @param reading what was read
     * @param first the air of the first install, of which only the readings are reviewed
     * @param induction how the engine gets its air, where that is known
     * @return what a reader must know, readings first
     */
    public static List<AirNotice> notices(Standard standard, AirReading reading, Optional<AirReading> first,
                                          Optional<Induction> induction) {
        AirReview review = new AirReview(standard, reading);
        review.barometer();
        review.humidity();
        first.ifPresent(air -> review.notices.addAll(ofFirst(standard, air)));
        review.temperature();
        review.limits();
        review.engine(induction);
        return List.copyOf(review.notices);
    }

    private static List<AirNotice> ofFirst(Standard standard, AirReading first) {
        AirReview review = new AirReview(standard, first);
        review.barometer();
        review.humidity();
        return review.notices.stream().map(AirNotice::atFirst).toList();
    }

    private void barometer() {
        Barometer barometer = reading.barometer();
        if (barometer.kind() == Barometer.Kind.SEA_LEVEL) {
            if (barometer.pressurePa() < LOWEST_SEA_LEVEL) {
                notices.add(AirNotice.of(Code.STATION_FOR_SEA_LEVEL, barometer.pressurePa()));
            }
            return;
        }
        barometer.elevationM().ifPresent(elevation -> {
            double between = (Atmosphere.standardPressure(0) + Atmosphere.standardPressure(elevation)) / 2;
            if (elevation >= LEAST_ELEVATION && barometer.pressurePa() > between) {
                double atStation = barometer.pressurePa() * Atmosphere.standardRatio(elevation);
                double trueFactor = Factor.of(standard, air.temperatureK(), atStation, air.vapourPressurePa());
                notices.add(AirNotice.of(Code.SEA_LEVEL_FOR_STATION, elevation, factor / trueFactor - 1));
            }
        });
    }

    private void humidity() {
        if (reading.humidity() instanceof Humidity.NotRead && Factor.usesHumidity(standard.correction())) {
            double moist = Factor.of(standard, air.temperatureK(), air.pressurePa(),
                    ASSUMED_HUMIDITY * Vapour.saturationPressure(air.temperatureK()));
            notices.add(AirNotice.of(Code.HUMIDITY_LEFT_OUT, ASSUMED_HUMIDITY, factor / moist - 1));
        }
        if (reading.humidity() instanceof Humidity.Relative relative && relative.share() < DRIEST) {
            notices.add(AirNotice.of(Code.HUMIDITY_TOO_LOW, relative.share()));
        }
    }

    private void temperature() {
        if (air.temperatureK() > HOT) {
            notices.add(AirNotice.of(Code.TEMPERATURE_LIKE_FAHRENHEIT, air.temperatureK() - Celsius.ZERO));
        }
    }

    private void limits() {
        StandardLimits limits = Factor.limits(standard.correction());
        if (standard.correction() == Correction.NONE) {
            return;
        }
        if (!limits.holdsTemperature(air.temperatureK())) {
            notices.add(AirNotice.of(Code.TEMPERATURE_OUTSIDE, limits.lowTemperatureK(), limits.highTemperatureK(), air.temperatureK()));
        }
        if (!limits.holdsDryPressure(air.dryPressurePa())) {
            notices.add(AirNotice.of(Code.DRY_PRESSURE_OUTSIDE, limits.lowDryPressurePa(), limits.highDryPressurePa(),
                    air.dryPressurePa()));
        }
        if (!limits.holdsFactor(factor)) {
            notices.add(AirNotice.of(Code.FACTOR_OUTSIDE, limits.lowFactor(), limits.highFactor(), factor));
        }
    }

    private void engine(Optional<Induction> induction) {
        if (standard.correction() != Correction.NONE && induction.filter(Induction::isBoosted).isPresent()) {
            notices.add(AirNotice.of(Code.BOOST_CAUTION));
        }
        if (standard.correction() == Correction.SAE_J607) {
            notices.add(AirNotice.of(Code.WITHDRAWN, Factor.of(Standard.plain(Correction.SAE_J1349), air)));
        }
    }
}

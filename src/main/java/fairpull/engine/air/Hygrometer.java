package fairpull.engine.air;

import fairpull.domain.air.AirReading;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.Humidity;
import fairpull.engine.stats.Roots;

/** What the hygrometer in hand would read in other air: the kind of reading is kept, as the sensor's error depends on it. */
final class Hygrometer {
    private static final double COLDEST = 233.15;
    private static final double FREEZING = 273.15;

    private final Humidity kind;

    /** A hygrometer that gives readings of the kind of {@code reading}. */
    Hygrometer(Humidity reading) {
        this.kind = reading;
    }

    /** {@return a reading, in the unit of its kind: a share, a dew point or a wet bulb in K} */
    Humidity reading(double value) {
        return kind.match(new Humidity.Cases<Humidity>() {
            @Override
            public Humidity relative(Humidity.Relative reading) {
                return new Humidity.Relative(value);
            }

            @Override
            public Humidity dewPoint(Humidity.DewPoint reading) {
                return new Humidity.DewPoint(value);
            }

            @Override
            public Humidity wetBulb(Humidity.WetBulb reading) {
                return new Humidity.WetBulb(value);
            }

            @Override
            public Humidity notRead() {
                return kind;
            }
        });
    }

    /** {@return the number of a reading, in the unit of its kind; 0 where nothing was read} */
    static double value(Humidity reading) {
        return reading.match(new Humidity.Cases<Double>() {
            @Override
            public Double relative(Humidity.Relative relative) {
                return relative.share();
            }

            @Override
            public Double dewPoint(Humidity.DewPoint dewPoint) {
                return dewPoint.temperatureK();
            }

            @Override
            public Double wetBulb(Humidity.WetBulb wetBulb) {
                return wetBulb.temperatureK();
            }

            @Override
            public Double notRead() {
                return 0.0;
            }
        });
    }

    /** {@return what can be read at a temperature; a wet bulb only above freezing} */
    Range scale(double temperatureK) {
        return kind.match(new Humidity.Cases<Range>() {
            @Override
            public Range relative(Humidity.Relative reading) {
                return new Range(0, 1);
            }

            @Override
            public Range dewPoint(Humidity.DewPoint reading) {
                return new Range(Math.min(COLDEST, temperatureK), temperatureK);
            }

            @Override
            public Range wetBulb(Humidity.WetBulb reading) {
                return new Range(Math.min(FREEZING, temperatureK), temperatureK);
            }

            @Override
            public Range notRead() {
                return new Range(0, 0);
            }
        });
    }

    /** {@return what it reads in air of a relative humidity above 0} */
    Humidity at(double share, double temperatureK, double pressurePa) {
        double vapour = share * Vapour.saturationPressure(temperatureK);
        return kind.match(new Humidity.Cases<Humidity>() {
            @Override
            public Humidity relative(Humidity.Relative reading) {
                return new Humidity.Relative(share);
            }

            @Override
            public Humidity dewPoint(Humidity.DewPoint reading) {
                return new Humidity.DewPoint(Vapour.dewPoint(vapour));
            }

            @Override
            public Humidity wetBulb(Humidity.WetBulb reading) {
                return new Humidity.WetBulb(Roots.between(wet -> Vapour.ofWetBulb(temperatureK, wet, pressurePa) - vapour,
                        Math.min(COLDEST, temperatureK), temperatureK, 1e-12));
            }

            @Override
            public Humidity notRead() {
                return kind;
            }
        });
    }

    /** {@return whether there is air that reads so: not below dry, and no dew point or wet bulb above the temperature} */
    static boolean isPossible(AirReading reading) {
        boolean relative = reading.humidity() instanceof Humidity.Relative;
        return Air.canBe(reading) && (relative || value(reading.humidity()) <= reading.temperatureK());
    }
}

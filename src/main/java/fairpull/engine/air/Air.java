package fairpull.engine.air;

import fairpull.domain.air.AirFigures;
import fairpull.domain.air.AirReading;
import fairpull.domain.air.AirState;
import fairpull.domain.air.Barometer;
import fairpull.domain.air.Humidity;

/** Air at the rig out of what was read, and what follows from it. */
public final class Air {
    /** J/(mol·K), CODATA 2018 (exact by definition of the mole and the kelvin). */
    static final double MOLAR_GAS_CONSTANT = 8.314462618;
    /** kg/mol of dry air, CIPM-2007 at 400 µmol/mol of carbon dioxide. */
    static final double DRY_AIR = 0.02896546;
    /** kg/mol of water. */
    private static final double WATER = 0.01801528;

    private Air() {
    }

    /**
     * The air at the rig.
     *
     * @throws IllegalArgumentException where no air could read so: vapour below none or above all of the pressure
     */
    public static AirState at(AirReading reading) {
        double pressure = stationPressure(reading.barometer(), 0);
        return new AirState(reading.temperatureK(), pressure,
                vapourPressure(reading.humidity(), reading.temperatureK(), pressure, 0));
    }

    /** {@return whether there is air that reads so; a wet bulb may be too low for any} */
    public static boolean canBe(AirReading reading) {
        double pressure = stationPressure(reading.barometer(), 0);
        double vapour = vapourPressure(reading.humidity(), reading.temperatureK(), pressure, 0);
        return vapour >= 0 && vapour < pressure;
    }

    /** {@return vapour pressure in Pa at a temperature and pressure, with an error added to the humidity reading in its own unit} */
    static double vapourPressure(Humidity humidity, double temperatureK, double pressurePa, double error) {
        return humidity.match(new Humidity.Cases<Double>() {
            @Override
            public Double relative(Humidity.Relative reading) {
                return (reading.share() + error) * Vapour.saturationPressure(temperatureK);
            }

            @Override
            public Double dewPoint(Humidity.DewPoint reading) {
                return Vapour.saturationPressure(reading.temperatureK() + error);
            }

            @Override
            public Double wetBulb(Humidity.WetBulb reading) {
                return Vapour.ofWetBulb(temperatureK, reading.temperatureK() + error, pressurePa);
            }

            @Override
            public Double notRead() {
                return 0.0;
            }
        });
    }

    /** {@return pressure in Pa at the rig, with an error in Pa added to the reading} */
    static double stationPressure(Barometer barometer, double error) {
        double reading = barometer.pressurePa() + error;
        return barometer.kind() == Barometer.Kind.STATION ? reading
                : Atmosphere.stationPressure(reading, barometer.elevationM().orElseThrow());
    }

    /** {@return density in kg/m³ of a mixture of ideal gases, within 5·10⁻⁴ of CIPM-2007 at ordinary conditions} */
    public static double density(AirState air) {
        return (air.dryPressurePa() * DRY_AIR + air.vapourPressurePa() * WATER) / (MOLAR_GAS_CONSTANT * air.temperatureK());
    }

    /** {@return everything that follows from a state} */
    public static AirFigures figures(AirState air) {
        return new AirFigures(air, air.vapourPressurePa() / Vapour.saturationPressure(air.temperatureK()),
                Vapour.dewPoint(air.vapourPressurePa()), density(air), Atmosphere.densityAltitude(air),
                Atmosphere.pressureAltitude(air.pressurePa()));
    }
}

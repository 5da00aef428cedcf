package fairpull.engine.air;

import fairpull.domain.air.AirState;

/**
 * Pressure with height, and heights that stand for pressure and density.
 *
 * @see "U.S. Standard Atmosphere (1976)"
 * @see "US National Weather Service, station pressure from altimeter setting; pressure altitude; density altitude (published forms)"
 */
public final class Atmosphere {
    private static final double SEA_LEVEL_PRESSURE = 101_325;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double LAPSE_RATE = 0.0065;
    private static final double GAS_CONSTANT_EXPONENT = 5.255_88;

    private static final double GRAVITY = 9.80665;
    private static final double ALTIMETER_EXPONENT = Air.MOLAR_GAS_CONSTANT / Air.DRY_AIR * LAPSE_RATE / GRAVITY;
    private static final double PRESSURE_ALTITUDE_EXPONENT = 0.190284;
    private static final double ALTIMETER_TEMPERATURE = 288;
    private static final double ALTIMETER_OFFSET = 30;

    private static final double FOOT = 0.3048;

    private Atmosphere() {
    }

    /** {@return the pressure in Pa of the standard atmosphere at a height in m, up to 11 000 m} */
    public static double standardPressure(double elevationM) {
        return SEA_LEVEL_PRESSURE * standardRatio(elevationM);
    }

    /** {@return the share of a sea-level pressure that the standard atmosphere leaves at a height in m} */
    public static double standardRatio(double elevationM) {
        return Math.pow(1 - LAPSE_RATE * elevationM / SEA_LEVEL_TEMPERATURE, GAS_CONSTANT_EXPONENT);
    }

    /**
     * Station pressure from an altimeter setting: p = (Aⁿ − p₀ⁿ·γ·H/T₀)^(1/n) + 0.3 hPa, with n = R·γ/g (R of dry air; often
     * printed as 0.190284, which is up to 0.03 hPa higher at 2000 m), p₀ 1013.25 hPa, γ 0.0065 K/m, T₀ 288 K.
     *
     * @param altimeterSettingPa reading reduced to sea level
     * @param elevationM height of the station
     * @return pressure in Pa at the station
     */
    public static double stationPressure(double altimeterSettingPa, double elevationM) {
        double reduced = Math.pow(altimeterSettingPa, ALTIMETER_EXPONENT)
                - Math.pow(SEA_LEVEL_PRESSURE, ALTIMETER_EXPONENT) * LAPSE_RATE * elevationM / ALTIMETER_TEMPERATURE;
        return Math.pow(reduced, 1 / ALTIMETER_EXPONENT) + ALTIMETER_OFFSET;
    }

    /** {@return the height in m at which the standard atmosphere has this pressure: 145366.45 ft·(1 − (p/p₀)^0.190284)} */
    public static double pressureAltitude(double stationPressurePa) {
        return 145_366.45 * FOOT * (1 - Math.pow(stationPressurePa / SEA_LEVEL_PRESSURE, PRESSURE_ALTITUDE_EXPONENT));
    }

    /**
     * Density altitude: 145366 ft·(1 − (17.326·p/Tᵥ)^0.235), p in inHg, virtual temperature Tᵥ = T/(1 − 0.378·e/p) in °R.
     *
     * @return height in m at which the standard atmosphere has this density
     */
    public static double densityAltitude(AirState air) {
        double virtualRankine = 1.8 * air.temperatureK() / (1 - 0.378 * air.vapourPressurePa() / air.pressurePa());
        double inchesOfMercury = air.pressurePa() / 3386.389;
        return 145_366 * FOOT * (1 - Math.pow(17.326 * inchesOfMercury / virtualRankine, 0.235));
    }
}

package fairpull.engine.air;

import fairpull.engine.stats.Roots;

/**
 * Water vapour in air, over liquid water. Pressures in Pa, temperatures in K.
 *
 * @see "Wagner and Pruß (1993), J. Phys. Chem. Ref. Data 22, 783–787; the saturation line of IAPWS SR1-86(1992)"
 * @see "ASHRAE Handbook – Fundamentals (2017), chapter 1, equations 20 and 33"
 */
public final class Vapour {
    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double CRITICAL_PRESSURE = 22.064e6;
    /** Molar mass of water over that of dry air, ASHRAE. */
    private static final double MASS_RATIO = 0.621945;
    private static final double COLDEST = 200;

    private Vapour() {
    }

    /**
     * Saturation pressure over liquid water: ln(p/pc) = (Tc/T)·Σ aᵢ·θ^bᵢ with θ = 1 − T/Tc.
     *
     * @param temperatureK 273.16 K to 647 K by the source; below freezing it is extrapolated over supercooled water
     * @return pressure in Pa
     */
    public static double saturationPressure(double temperatureK) {
        double theta = 1 - temperatureK / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(theta);
        double cube = theta * theta * theta;
        double sum = -7.85951783 * theta + 1.84408259 * theta * root - 11.7866497 * cube + 22.6807411 * cube * root
                - 15.9618719 * cube * theta + 1.80122502 * cube * cube * theta * root;
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperatureK * sum);
    }

    /**
     * The inverse of {@link #saturationPressure}, found by iteration.
     *
     * @param vapourPressurePa above 0
     * @return temperature in K at which that vapour would be saturated; NaN for none, or so little that it has no sensible dew point
     */
    public static double dewPoint(double vapourPressurePa) {
        if (!(vapourPressurePa > saturationPressure(COLDEST))) {
            return Double.NaN;
        }
        return Roots.between(kelvin -> Math.log(saturationPressure(kelvin) / vapourPressurePa), COLDEST, CRITICAL_TEMPERATURE - 1, 1e-12);
    }

    /**
     * Vapour pressure by the psychrometric equation W = ((2501 − 2.326·t')·W'ₛ − 1.006·(t − t')) / (2501 + 1.86·t − 4.186·t'),
     * t and t' in °C, W humidity ratio, W'ₛ that of saturation at the wet bulb (ASHRAE, equation 33).
     *
     * @param temperatureK air temperature
     * @param wetBulbK wet bulb, above 273.15 K (no ice on the sleeve) and not above the air temperature
     * @param pressurePa total pressure
     * @return pressure in Pa; below 0 where no air could be that dry
     */
    public static double ofWetBulb(double temperatureK, double wetBulbK, double pressurePa) {
        double dry = temperatureK - Celsius.ZERO;
        double wet = wetBulbK - Celsius.ZERO;
        double saturated = humidityRatio(saturationPressure(wetBulbK), pressurePa);
        double ratio = ((2501 - 2.326 * wet) * saturated - 1.006 * (dry - wet)) / (2501 + 1.86 * dry - 4.186 * wet);
        return ofHumidityRatio(ratio, pressurePa);
    }

    /** {@return mass of vapour per mass of dry air (ASHRAE, equation 20)} */
    public static double humidityRatio(double vapourPressurePa, double pressurePa) {
        return MASS_RATIO * vapourPressurePa / (pressurePa - vapourPressurePa);
    }

    /** {@return the vapour pressure of a humidity ratio: the inverse of {@link #humidityRatio}} */
    public static double ofHumidityRatio(double ratio, double pressurePa) {
        return pressurePa * ratio / (MASS_RATIO + ratio);
    }
}

package fairpull.domain.air;

/**
 * Within what a standard may be used; where it names no range, the ends are infinite.
 *
 * @param lowTemperatureK lowest air temperature
 * @param highTemperatureK highest air temperature
 * @param lowDryPressurePa lowest pressure of dry air
 * @param highDryPressurePa highest pressure of dry air
 * @param lowFactor lowest factor
 * @param highFactor highest factor
 */
public record StandardLimits(double lowTemperatureK, double highTemperatureK, double lowDryPressurePa, double highDryPressurePa,
        double lowFactor, double highFactor) {
    /** {@return whether air and factor are within all ranges} */
    public boolean hold(AirState air, double factor) {
        return holdsTemperature(air.temperatureK()) && holdsDryPressure(air.dryPressurePa()) && holdsFactor(factor);
    }

    /** {@return the same limits with another range of the factor} */
    public StandardLimits withFactors(double low, double high) {
        return new StandardLimits(lowTemperatureK, highTemperatureK, lowDryPressurePa, highDryPressurePa, low, high);
    }

    /** {@return whether the temperature is within its range} */
    public boolean holdsTemperature(double kelvin) {
        return kelvin >= lowTemperatureK && kelvin <= highTemperatureK;
    }

    /** {@return whether the pressure of dry air is within its range} */
    public boolean holdsDryPressure(double pascal) {
        return pascal >= lowDryPressurePa && pascal <= highDryPressurePa;
    }

    /** {@return whether the factor is within its range} */
    public boolean holdsFactor(double factor) {
        return factor >= lowFactor && factor <= highFactor;
    }
}

package fairpull.domain.air;

/**
 * Moist air at the rig.
 *
 * @param temperatureK temperature
 * @param pressurePa total pressure at the rig
 * @param vapourPressurePa the share of it that is water vapour
 */
public record AirState(double temperatureK, double pressurePa, double vapourPressurePa) {
    public AirState {
        boolean sound = temperatureK > 0 && pressurePa > 0 && vapourPressurePa >= 0 && vapourPressurePa < pressurePa
                && Double.isFinite(temperatureK) && Double.isFinite(pressurePa);
        if (!sound) {
            throw new IllegalArgumentException("no air: " + temperatureK + " K, " + pressurePa + " Pa with " + vapourPressurePa
                    + " Pa of vapour");
        }
    }

    /** {@return the pressure of the dry air alone} */
    public double dryPressurePa() {
        return pressurePa - vapourPressurePa;
    }
}

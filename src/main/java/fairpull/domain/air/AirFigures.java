package fairpull.domain.air;

/**
 * What follows from a state of the air.
 *
 * @param state the air at the rig
 * @param relativeHumidity share of saturation over water
 * @param dewPointK where the air would be saturated; NaN for dry air
 * @param densityKgM3 density
 * @param densityAltitudeM height in the standard atmosphere with this density
 * @param pressureAltitudeM height in the standard atmosphere with this pressure
 */
public record AirFigures(AirState state, double relativeHumidity, double dewPointK, double densityKgM3, double densityAltitudeM,
        double pressureAltitudeM) {
}

package fairpull.engine.audit;

import fairpull.domain.air.AirState;
import fairpull.domain.air.Standard;
import fairpull.domain.audit.Procedure;
import fairpull.domain.plan.Correction;
import fairpull.engine.air.Atmosphere;
import fairpull.engine.air.Factor;
import java.util.List;

/**
 * The air that a rig may have run in where nothing is said of it: from 5 °C with 5 hPa of vapour and a pressure 2.5 % above that of the
 * standard atmosphere at its elevation, to 35 °C with 28 hPa and a pressure 2.5 % below it (common practice, no source). Of a rig whose
 * elevation is not disclosed, {@value #USUAL_ELEVATION_M} m.
 *
 * <p>Checked against: factors reckoned by hand (RangeOfAirTest).
 */
final class RangeOfAir {
    /** Height of a rig of which nothing is said; common practice, no source. */
    static final double USUAL_ELEVATION_M = 300;
    private static final double ZERO_CELSIUS = 273.15;
    private static final double PRESSURES_APART = 0.025;

    private final AirState dense;
    private final AirState thin;

    private RangeOfAir(double elevationM) {
        double pressure = Atmosphere.standardPressure(elevationM);
        dense = new AirState(ZERO_CELSIUS + 5, pressure * (1 + PRESSURES_APART), 500);
        thin = new AirState(ZERO_CELSIUS + 35, pressure * (1 - PRESSURES_APART), 2_800);
    }

    /** {@return the air at the rig of a publication} */
    static RangeOfAir of(Procedure procedure) {
        return new RangeOfAir(elevation(procedure));
    }

    /** {@return the height of its rig above sea level, in m} */
    static double elevation(Procedure procedure) {
        return procedure.correcting().elevation().map(height -> height.si()).orElse(USUAL_ELEVATION_M);
    }

    /**
     * {@return the air in which mixed standards are told: that of reference, at the pressure of the standard atmosphere where the elevation
     * is known}
     */
    static AirState usual(Procedure procedure) {
        AirState reference = MixedStandards.REFERENCE;
        return procedure.correcting().elevation().map(height -> new AirState(reference.temperatureK(),
                Atmosphere.standardPressure(height.si()), reference.vapourPressurePa())).orElse(reference);
    }

    /** {@return its densest and its thinnest air, and that of reference} */
    List<AirState> states() {
        return List.of(dense, thin, MixedStandards.REFERENCE);
    }

    /** {@return the apparent gain of an unchanged car that was not corrected, run before in the thinnest air and after in the densest} */
    double uncorrected() {
        Standard standard = Standard.plain(Correction.SAE_J1349);
        return Factor.of(standard, thin) / Factor.of(standard, dense) - 1;
    }
}

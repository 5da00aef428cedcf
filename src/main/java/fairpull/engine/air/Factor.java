package fairpull.engine.air;

import fairpull.domain.air.AirState;
import fairpull.domain.air.FuelDelivery;
import fairpull.domain.air.Induction;
import fairpull.domain.air.Standard;
import fairpull.domain.air.StandardLimits;
import fairpull.domain.plan.Correction;

/**
 * The factor that brings measured power or torque to reference air. Temperatures count as the standards print them, T = t + 273.
 *
 * <p>With p_d the pressure of dry air:
 * <ul>
 * <li>SAE J1349 (1990–2004 form): 1.180·f − 0.18, f = (990 hPa/p_d)·√(T/298 K); with a mechanical efficiency η: (1 + κ)·f − κ,
 * κ = (1 − η)/η.
 * <li>ISO 1585 and UN R85, spark ignition: (990/p_d)^1.2·(T/298)^0.6.
 * <li>ISO 1585 and UN R85, compression ignition: f_a^f_m; f_a = (990/p_d)·(T/298)^0.7, or (990/p_d)^0.7·(T/298)^1.5 when
 * turbocharged; f_m = 0.036·q_c − 1.14 for 40 ≤ q_c ≤ 65, 0.3 below, 1.2 above; q_c fuel in mg per litre and cycle over the boost ratio.
 * <li>80/1269/EEC (1980): (990/p_d)·√(T/298).
 * <li>DIN 70020: (1013/p)·√(T/293), total pressure p.
 * <li>SAE J607: (29.92 inHg/p_d)·√((°F + 460)/520).
 * </ul>
 *
 * @see "UN Regulation No. 85, annex 5 (the diesel exponent f_m); the limits of the other standards from memory"
 */
public final class Factor {
    private static final double REFERENCE_DRY_PRESSURE = 99_000;
    private static final double REFERENCE_TEMPERATURE = 298;
    private static final StandardLimits SAE_LIMITS = limits(90_000, 105_000, 0.93, 1.07);
    private static final StandardLimits ISO_LIMITS = limits(80_000, 110_000, 0.93, 1.07);
    private static final StandardLimits DIESEL_LIMITS = limits(80_000, 110_000, 0.9, 1.1);
    private static final StandardLimits FACTOR_ALONE = new StandardLimits(0, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, 0.93,
            1.07);

    private Factor() {
    }

    /** {@return the factor; 1 for no correction} */
    public static double of(Standard standard, AirState air) {
        return of(standard, air.temperatureK(), air.pressurePa(), air.vapourPressurePa());
    }

    /** {@return the factor at a temperature in K, a total pressure and a vapour pressure in Pa} */
    static double of(Standard standard, double temperatureK, double pressurePa, double vapourPressurePa) {
        double pressureRatio = REFERENCE_DRY_PRESSURE / (pressurePa - vapourPressurePa);
        double absolute = Celsius.asPrinted(temperatureK);
        double temperatureRatio = absolute / REFERENCE_TEMPERATURE;
        return switch (standard.correction()) {
            case NONE -> 1;
            case SAE_J1349 -> saeJ1349(standard, pressureRatio * Math.sqrt(temperatureRatio));
            case ISO_1585 -> Math.pow(pressureRatio, 1.2) * Math.pow(temperatureRatio, 0.6);
            case ISO_1585_CI -> compressionIgnition(standard.fuel().orElseThrow(), pressureRatio, temperatureRatio);
            case EEC_80_1269 -> pressureRatio * Math.sqrt(temperatureRatio);
            case DIN_70020 -> 101_300 / pressurePa * Math.sqrt(absolute / 293);
            case SAE_J607 -> 29.92 * 3386.389 / (pressurePa - vapourPressurePa)
                    * Math.sqrt(((temperatureK - Celsius.ZERO) * 1.8 + 32 + 460) / 520);
        };
    }

    private static double saeJ1349(Standard standard, double atmospheric) {
        if (standard.efficiency().isEmpty()) {
            return 1.180 * atmospheric - 0.18;
        }
        double efficiency = standard.efficiency().getAsDouble();
        double friction = (1 - efficiency) / efficiency;
        return (1 + friction) * atmospheric - friction;
    }

    private static double compressionIgnition(FuelDelivery fuel, double pressureRatio, double temperatureRatio) {
        double atmospheric = fuel.induction() == Induction.TURBOCHARGED
                ? Math.pow(pressureRatio, 0.7) * Math.pow(temperatureRatio, 1.5)
                : pressureRatio * Math.pow(temperatureRatio, 0.7);
        return Math.pow(atmospheric, engineFactor(fuel));
    }

    /** {@return the diesel exponent f_m, 0.3 to 1.2} */
    static double engineFactor(FuelDelivery fuel) {
        double milligramsPerS = fuel.fuelRateKgPerS() * 1e6;
        double litres = fuel.displacementM3() * 1000;
        double cyclesPerS = fuel.engineSpeedRadPerS() / (2 * Math.PI) / (fuel.strokes() / 2);
        double perLitreAndCycle = milligramsPerS / (litres * cyclesPerS) / fuel.boostRatio();
        return perLitreAndCycle < 40 ? 0.3 : perLitreAndCycle > 65 ? 1.2 : 0.036 * perLitreAndCycle - 1.14;
    }

    /** {@return within what a correction may be used; where its source names no range, only the customary one for the factor} */
    public static StandardLimits limits(Correction correction) {
        return switch (correction) {
            case SAE_J1349 -> SAE_LIMITS;
            case ISO_1585 -> ISO_LIMITS;
            case ISO_1585_CI -> DIESEL_LIMITS;
            case NONE, EEC_80_1269, DIN_70020, SAE_J607 -> FACTOR_ALONE;
        };
    }

    /** {@return whether the factor depends on humidity} */
    public static boolean usesHumidity(Correction correction) {
        return correction != Correction.NONE && correction != Correction.DIN_70020;
    }

    private static StandardLimits limits(double lowPressure, double highPressure, double lowFactor, double highFactor) {
        return new StandardLimits(Celsius.ZERO + 15, Celsius.ZERO + 35, lowPressure, highPressure, lowFactor, highFactor);
    }
}

package fairpull.domain.air;

import java.util.Objects;

/**
 * What the correction of a compression-ignition engine needs to know beside the air.
 *
 * @param induction how the engine gets its air
 * @param fuelRateKgPerS fuel burnt
 * @param displacementM3 swept volume of all cylinders
 * @param engineSpeedRadPerS engine speed
 * @param strokes 2 or 4
 * @param boostRatio absolute pressure after the compressor over that before it; 1 without a compressor
 */
public record FuelDelivery(Induction induction, double fuelRateKgPerS, double displacementM3, double engineSpeedRadPerS, int strokes,
        double boostRatio) {
    public FuelDelivery {
        Objects.requireNonNull(induction, "induction");
        positive("the fuel rate", fuelRateKgPerS);
        positive("the displacement", displacementM3);
        positive("the engine speed", engineSpeedRadPerS);
        if (strokes != 2 && strokes != 4) {
            throw new IllegalArgumentException("an engine has 2 or 4 strokes, not " + strokes);
        }
        if (!(boostRatio >= 1) || Double.isInfinite(boostRatio) || !induction.isBoosted() && boostRatio != 1) {
            throw new IllegalArgumentException("the boost ratio is 1 or more, and 1 without a compressor; it was " + boostRatio);
        }
    }

    private static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be above 0, was " + value);
        }
    }
}

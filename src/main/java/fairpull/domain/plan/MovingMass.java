package fairpull.domain.plan;

import java.util.Objects;
import java.util.Optional;

/**
 * What a pull accelerates, for logs of speed that hold neither power nor torque.
 *
 * @param massKg the mass at the surface of roller or tyre, rotating parts included: for a roller its moment of inertia ÷ radius²
 * @param massUncertaintyKg its standard uncertainty
 * @param windowS the width of the local quadratic fit from which the acceleration is taken
 * @param coastDown what holds the car back beside its inertia; empty where that is not added
 */
public record MovingMass(double massKg, double massUncertaintyKg, double windowS, Optional<CoastDown> coastDown) {
    /**
     * Force at speed v: F0 + F1·v + F2·v², as a coast-down gives it (common practice; the form of SAE J1263 and J2263, from memory).
     *
     * @param f0N in N
     * @param f1NsPerM in N·s/m
     * @param f2Ns2PerM2 in N·s²/m²
     * @param uncertaintyF0N standard uncertainty of the first
     * @param uncertaintyF1NsPerM of the second
     * @param uncertaintyF2Ns2PerM2 of the third
     */
    public record CoastDown(double f0N, double f1NsPerM, double f2Ns2PerM2, double uncertaintyF0N, double uncertaintyF1NsPerM,
            double uncertaintyF2Ns2PerM2) {
        public CoastDown {
            Checks.notNegative("F0 of the coast-down", f0N);
            if (!Double.isFinite(f1NsPerM)) {
                throw new IllegalArgumentException("F1 of the coast-down must be a number, was " + f1NsPerM);
            }
            Checks.notNegative("F2 of the coast-down", f2Ns2PerM2);
            Checks.notNegative("the uncertainty of F0", uncertaintyF0N);
            Checks.notNegative("the uncertainty of F1", uncertaintyF1NsPerM);
            Checks.notNegative("the uncertainty of F2", uncertaintyF2Ns2PerM2);
        }
    }

    public MovingMass {
        Checks.positive("the moving mass", massKg);
        Checks.notNegative("the uncertainty of the moving mass", massUncertaintyKg);
        Checks.positive("the window of the acceleration", windowS);
        Objects.requireNonNull(coastDown, "the coast-down");
    }

    /** {@return the mass that a roller is worth at its surface: moment of inertia ÷ radius²} */
    public static double ofRoller(double inertiaKgM2, double radiusM) {
        Checks.positive("the moment of inertia", inertiaKgM2);
        Checks.positive("the radius of the roller", radiusM);
        return inertiaKgM2 / (radiusM * radiusM);
    }
}

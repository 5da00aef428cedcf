package fairpull.demo;

/**
 * Full-throttle torque of an invented engine over its speed: one broad hump, steeper above its top than below, with two small waves on it.
 *
 * @param peakNm torque at the top of the hump
 * @param peakRpm engine speed there
 * @param widthBelowRpm how far below the top the hump has fallen to 1/e
 * @param widthAboveRpm the same above the top
 * @param partBWattsAt5000 what part B adds to the power at 5000 rpm, growing with the square of the speed
 */
record TorqueCurve(double peakNm, double peakRpm, double widthBelowRpm, double widthAboveRpm, double partBWattsAt5000) {
    private static final double RAD_PER_S_IN_RPM = Math.PI / 30;

    /** {@return the torque in N·m with part A or B fitted} */
    double torqueNm(double rpm, boolean partB) {
        double away = (rpm - peakRpm) / (rpm < peakRpm ? widthBelowRpm : widthAboveRpm);
        double waves = 0.018 * hump(rpm, peakRpm + 900, 380) - 0.022 * hump(rpm, peakRpm - 800, 320);
        double gainW = partB ? partBWattsAt5000 * rpm * rpm / 25e6 : 0;
        return peakNm * (Math.exp(-away * away) + waves) + gainW / (rpm * RAD_PER_S_IN_RPM);
    }

    /** {@return the power in W of a torque at an engine speed} */
    static double powerW(double torqueNm, double rpm) {
        return torqueNm * rpm * RAD_PER_S_IN_RPM;
    }

    private static double hump(double rpm, double centre, double width) {
        double away = (rpm - centre) / width;
        return Math.exp(-away * away);
    }
}

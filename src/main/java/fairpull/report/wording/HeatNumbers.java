package fairpull.report.wording;

import fairpull.domain.unit.Units;

/** How times and temperatures of a cool-down are printed. */
public final class HeatNumbers {
    private HeatNumbers() {
    }

    /** {@return a time: seconds below two minutes, then minutes, then hours} */
    public static String time(double seconds) {
        if (seconds < 120) {
            return Numbers.brief(seconds, "s");
        }
        return seconds < 3 * 3600 ? Numbers.brief(Units.MINUTE.fromSi(seconds), "min") : Numbers.brief(Units.HOUR.fromSi(seconds), "h");
    }

    /** {@return both ends of a time, in minutes} */
    public static String times(double low, double high) {
        return time(low) + " to " + time(high);
    }

    /** {@return a time in minutes, rounded up to a tenth: an interval that is rounded down would not hold} */
    public static String intervalUp(double seconds) {
        return Numbers.given(Math.ceil(Units.MINUTE.fromSi(seconds) * 10 - 1e-9) / 10, "min");
    }

    /** {@return a temperature} */
    public static String celsius(double kelvin) {
        return Numbers.resolving(1, "°C").with(Units.CELSIUS.fromSi(kelvin));
    }

    /** {@return a difference of temperatures} */
    public static String kelvin(double kelvin) {
        return Numbers.brief(kelvin, "K");
    }

    /** {@return a share as percent, two digits} */
    public static String share(double share) {
        return Numbers.resolving(share * 100, "%").with(share * 100);
    }
}

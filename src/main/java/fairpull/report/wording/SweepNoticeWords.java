package fairpull.report.wording;

import fairpull.domain.finding.Notice;

/** Sentences about the sweeps of pulls. */
final class SweepNoticeWords {
    private SweepNoticeWords() {
    }

    static String sentence(Notice notice) {
        String pulls = String.join(", ", notice.names());
        return switch (notice.code()) {
            case SWEEP_NOT_FOUND -> "No sweep at full throttle was found in " + pulls + "; look whether the log holds the whole pull.";
            case SWEEPS_SEVERAL -> "Several sweeps in one log: " + pulls + "; the one in which engine speed rises most counts, so give "
                    + "each sweep a file of its own.";
            case THROTTLE_NEVER_FULL -> "The throttle opens to " + percent(notice, 0) + " or less of its opening in the reference pull at "
                    + pulls + "; a pull at part throttle says nothing of full power.";
            case SLIP -> "Engine speed over roller or car speed varies by up to " + percent(notice, 1) + " within the sweep of " + pulls
                    + " (1 % is common practice); look for slip of tyre, clutch or converter, or for a coarse speed.";
            case GEAR_CHANGED -> "Engine speed over roller or car speed steps during " + pulls
                    + ": a change of gear, so leave the pull out or run it anew.";
            case SPEED_RATIO_DIFFERS -> "Engine speed over roller or car speed differs from the reference pull by "
                    + range(notice) + " at " + pulls + " (1 % is common practice); another gear, slip or another tyre moves the reading.";
            case SWEEP_RATE_DIFFERS -> "The sweep rate differs from the reference pull by " + range(notice) + " at " + pulls
                    + " (5 % is common practice); a faster sweep reads lower, so keep load, gear and start alike.";
            case POWER_FROM_MOTION -> "Power was computed from speed and time at " + pulls + ": "
                    + Numbers.given(notice.figures().get(0), "kg") + " accelerated, smoothed over "
                    + Numbers.given(notice.figures().get(1), "s")
                    + "; mass and coast-down leave it a standard uncertainty of up to " + percent(notice, 2)
                    + ", common to all pulls of the test.";
            default -> throw new IllegalArgumentException(notice.code() + " is not about sweeps");
        };
    }

    private static String range(Notice notice) {
        String low = signed(notice.figures().get(0));
        String high = signed(notice.figures().get(1));
        return low.equals(high) ? low : low + " to " + high;
    }

    private static String signed(double share) {
        return (share < 0 ? "−" : "+") + AirWords.percent(Math.abs(share));
    }

    private static String percent(Notice notice, int place) {
        return AirWords.percent(notice.figures().get(place));
    }
}

package fairpull.io.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times of day as loggers write them, such as 12:30:05, 12:30:05.123 or with a date before it, as seconds since midnight; where the offset
 * stands behind them, since midnight of universal time.
 */
final class ClockText {
    private static final Pattern CLOCK = Pattern.compile("(?:\\d{1,4}[-./]\\d{1,2}[-./]\\d{1,4}[ T])?\\s*"
            + "([01]?\\d|2[0-3]):([0-5]\\d):([0-5]\\d)(?:[.,](\\d{1,9}))?\\s*(?:Z|([+-]\\d{2}):?(\\d{2}))?");
    private static final int SECONDS_A_MINUTE = 60;
    private static final int MINUTES_AN_HOUR = 60;
    private static final int MINUTES_A_DAY = 1440;
    private static final int SHORTEST = 7;
    private static final int LONGEST = 40;

    private ClockText() {
    }

    /** {@return whether a cell is a time of day} */
    static boolean isClock(CharSequence cell) {
        return !Double.isNaN(seconds(cell));
    }

    /** {@return the seconds since midnight, NaN where a cell is no time of day} */
    static double seconds(CharSequence cell) {
        if (cell.length() < SHORTEST || cell.length() > LONGEST || !holdsColon(cell)) {
            return Double.NaN;
        }
        Matcher clock = CLOCK.matcher(cell.toString().strip());
        if (!clock.matches()) {
            return Double.NaN;
        }
        long minutes = Long.parseLong(clock.group(1)) * MINUTES_AN_HOUR + Long.parseLong(clock.group(2));
        if (clock.group(5) != null) {
            long ahead = Long.parseLong(clock.group(5)) * MINUTES_AN_HOUR;
            minutes -= ahead + (clock.group(5).startsWith("-") ? -1 : 1) * Long.parseLong(clock.group(6));
            minutes = Math.floorMod(minutes, MINUTES_A_DAY);
        }
        long seconds = minutes * SECONDS_A_MINUTE + Long.parseLong(clock.group(3));
        return Double.parseDouble(seconds + "." + (clock.group(4) == null ? "0" : clock.group(4)));
    }

    private static boolean holdsColon(CharSequence cell) {
        for (int i = 0; i < cell.length(); i++) {
            if (cell.charAt(i) == ':') {
                return true;
            }
        }
        return false;
    }
}

package fairpull.report.wording;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How times are printed: the day as written in ISO 8601, the clock to the minute, and the offset from UTC. */
public final class Times {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private Times() {
    }

    /** {@return day, clock and offset} */
    public static String full(OffsetDateTime time) {
        return MINUTE.format(time) + " " + zone(time);
    }

    /** {@return the offset from UTC} */
    public static String zone(OffsetDateTime time) {
        return "UTC" + (time.getOffset().equals(ZoneOffset.UTC) ? "" : time.getOffset().toString().replace('-', '−'));
    }

    /** {@return the clock to the second} */
    public static String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }
}

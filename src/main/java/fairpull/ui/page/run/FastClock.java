package fairpull.ui.page.run;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that runs faster than the system's, to try a day out. */
public final class FastClock extends Clock {
    private static final String PROPERTY = "fairpull.clock";
    private static final int PARTS = 3;

    private final double speed;
    private final Instant real;
    private final Instant shown;
    private final ZoneId zone;

    /**
     * A clock.
     *
     * @param speed how many times as fast it runs
     * @param real when it started
     * @param shown what it showed then
     * @param zone its zone
     */
    public FastClock(double speed, Instant real, Instant shown, ZoneId zone) {
        this.speed = speed;
        this.real = real;
        this.shown = shown;
        this.zone = zone;
    }

    /**
     * {@return the system's clock, unless {@code -Dfairpull.clock=60@REAL@SHOWN} asks for one sixty times as fast that showed the instant
     * SHOWN when it was REAL, so that it goes on over a restart}
     */
    static Clock ofSystem() {
        String[] parts = System.getProperty(PROPERTY, "").split("@");
        return parts.length == PARTS ? new FastClock(Double.parseDouble(parts[0]), Instant.parse(parts[1]), Instant.parse(parts[2]),
                ZoneId.systemDefault()) : Clock.systemDefaultZone();
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new FastClock(speed, real, shown, other);
    }

    @Override
    public Instant instant() {
        long passed = Duration.between(real, Instant.now()).toMillis();
        return shown.plusMillis(Math.round(passed * speed));
    }
}

package fairpull.report.wording;

import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.air.AmbientWindow;
import fairpull.domain.air.AmbientWindow.Change;
import fairpull.domain.air.AmbientWindow.Obstacle;
import fairpull.domain.air.AmbientWindow.Range;
import fairpull.domain.air.AmbientWindow.Ranges;
import fairpull.domain.air.AmbientWindow.Row;
import fairpull.domain.air.Humidity;
import fairpull.domain.air.StandardLimits;
import fairpull.domain.air.WindowQuestion;
import fairpull.domain.unit.Units;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The ambient window in words, and as a table of station pressures. */
public final class WindowWords {
    private WindowWords() {
    }

    /**
     * {@return the answer, one paragraph a line, then the table}
     *
     * @param window the window
     * @param guessed whether the model error is a starting guess
     * @param surface where it is read
     */
    public static String text(AmbientWindow window, boolean guessed, Surface surface) {
        return decision(window, surface) + "\n" + budget(window, guessed)
                + "\n" + ranges(window) + "\n" + change(window) + "\n" + table(window);
    }

    /** {@return go or no-go, with the reason} */
    public static String decision(AmbientWindow window, Surface surface) {
        return window.go() ? "Go: a pull may start in this air." : "No go: "
                + window.obstacles().stream().map(obstacle -> obstacle(obstacle, window.limits(), surface))
                .collect(Collectors.joining("; ")) + ".";
    }

    /** {@return why not, in a few words} */
    public static String obstacle(Obstacle obstacle, StandardLimits limits, Surface surface) {
        return switch (obstacle) {
            case SENSORS_TOO_COARSE -> "the sensors alone use up what the correction may get wrong (take better ones"
                    + new Remedy(", or allow it a larger share with --share", "").on(surface) + ")";
            case MOVED_TOO_FAR -> "the air has moved too far since the first install (fit A again and measure it in this air, or wait "
                    + "for the air to return)";
            case TEMPERATURE_OUTSIDE -> "the temperature is outside the standard’s range, "
                    + ends(limits.lowTemperatureK(), limits.highTemperatureK(), Units.CELSIUS::fromSi, 0, "°C");
            case DRY_PRESSURE_OUTSIDE -> "the pressure of the dry air is outside the standard’s range, "
                    + ends(limits.lowDryPressurePa(), limits.highDryPressurePa(), Units.HECTOPASCAL::fromSi, 0, "hPa");
            case FACTOR_OUTSIDE -> "the factor is outside its range, "
                    + ends(limits.lowFactor(), limits.highFactor(), factor -> factor, 2, "")
                    + " (sources disagree on it" + new Remedy("; --factor-range sets another", "").on(surface) + ")";
        };
    }

    private static String budget(AmbientWindow window, boolean guessed) {
        WindowQuestion question = window.question();
        return "Between A and B the correction may get " + AirWords.percent(window.allowedError()) + " wrong, "
                + Numbers.percent(question.share()) + " of the worthwhile gain of " + Numbers.percent(question.worthwhileGain())
                + "; sensors take " + AirWords.percent(window.sensorError()) + " (twice the standard uncertainty within the session)"
                + window.changeSoFar().map(change -> " and the correction itself " + AirWords.percent(window.modelError())
                + " by its change since the first install").orElse(" and the rest is left for a change of the air")
                + ". What the correction gets wrong in the air of both parts cancels; counted is "
                + Numbers.percent(question.modelError()) + " of its change" + (guessed ? ", which is a starting guess." : ".");
    }

    private static String ranges(AmbientWindow window) {
        return "With the other readings as they are, pulls may start " + places(window.ranges(), window.question().now().humidity(),
                ", and ") + "; the gates of a plan hold besides.";
    }

    private static String places(Ranges ranges, Humidity read, String last) {
        String temperature = "at " + range(ranges.temperatureK(), "no temperature", "", Units.CELSIUS::fromSi, 1, "°C");
        String pressure = "at " + range(ranges.pressurePa(), "no station pressure", " station pressure", Units.HECTOPASCAL::fromSi, 1,
                "hPa");
        return read instanceof Humidity.NotRead ? temperature + last + pressure
                : temperature + ", " + pressure + last + humidity(ranges, read);
    }

    private static String humidity(Ranges ranges, Humidity read) {
        if (read instanceof Humidity.Relative) {
            return "at " + range(ranges.humidity(), "no relative humidity", " relative humidity", Units.PERCENT::fromSi, 0, "%");
        }
        String name = read instanceof Humidity.DewPoint ? "dew point" : "wet bulb";
        return "at " + ranges.humidity().map(range -> "a " + name + " of " + ends(range.low(), range.high(), Units.CELSIUS::fromSi, 1,
                "°C")).orElse("no " + name);
    }

    private interface Scale {
        double of(double si);
    }

    private static String range(Optional<Range> range, String none, String noun, Scale scale, int decimals, String unit) {
        return range.map(found -> ends(found.low(), found.high(), scale, decimals, unit) + noun).orElse(none);
    }

    private static String ends(double low, double high, Scale scale, int decimals, String unit) {
        return AirWords.fixed(scale.of(low), decimals, "") + " to " + AirWords.fixed(scale.of(high), decimals, unit);
    }

    private static String change(AmbientWindow window) {
        if (window.change().isEmpty()) {
            return "No change between the first and the last install is allowed: the sensors leave nothing.";
        }
        Change change = window.change().get();
        boolean begun = window.changeSoFar().isPresent();
        return (begun ? "Since the first install the factor has moved by " + AirWords.percent(window.changeSoFar().get()) + " and may by "
                : "If this is the air of the first install, the factor may move until the last by ") + AirWords.percent(change.factor())
                + " either way: one reading alone moving from " + (begun ? "that air" : "it") + ", later pulls may start "
                + places(change.ranges(), window.question().start().humidity(), ", or ") + ".";
    }

    private static String table(AmbientWindow window) {
        StringBuilder table = new StringBuilder("Station pressure within which a pull may start, by temperature and humidity (hPa):\n");
        table.append("  °C");
        window.rows().stream().mapToDouble(Row::humidity).distinct()
                .forEach(humidity -> table.append(String.format(Locale.ROOT, "%16s", Math.round(100 * humidity) + " %")));
        double line = Double.NaN;
        for (Row row : window.rows()) {
            if (row.temperatureK() != line) {
                line = row.temperatureK();
                table.append(String.format(Locale.ROOT, "\n%4d", Math.round(Units.CELSIUS.fromSi(line))));
            }
            table.append(String.format(Locale.ROOT, "%16s", row.pressurePa().map(WindowWords::inward).orElse("none")));
        }
        return table.append('\n').toString();
    }

    /** Whole hPa, rounded inward: what is printed is allowed. */
    private static String inward(Range range) {
        long low = (long) Math.ceil(range.low() / 100);
        long high = (long) Math.floor(range.high() / 100);
        return low > high ? "none" : low + " to " + high;
    }
}

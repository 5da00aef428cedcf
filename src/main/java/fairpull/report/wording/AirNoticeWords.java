package fairpull.report.wording;

import fairpull.domain.Remedy;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.air.AirNotice;
import fairpull.domain.unit.Units;

/** One sentence for each notice about a correction, with what to do where something can be done. */
public final class AirNoticeWords {
    private AirNoticeWords() {
    }

    /** {@return the sentence of a notice} */
    public static String sentence(AirNotice notice) {
        return sentence(notice, Surface.COMMAND_LINE);
    }

    /** {@return the same for a surface} */
    public static String sentence(AirNotice notice, Surface surface) {
        return (notice.ofFirst() ? "First install: " : "") + words(notice, surface);
    }

    private static String words(AirNotice notice, Surface surface) {
        return switch (notice.code()) {
            case SEA_LEVEL_FOR_STATION -> "At " + AirWords.height(figure(notice, 0)) + " this pressure looks like one reduced to sea "
                    + "level; if it is, the factor is " + AirWords.percent(Math.abs(figure(notice, 1))) + " too "
                    + (figure(notice, 1) < 0 ? "low" : "high") + ", so read the barometer at the rig, or "
                    + new Remedy("say --sea-level", "give the elevation of the rig").on(surface) + ".";
            case STATION_FOR_SEA_LEVEL -> "A sea-level pressure of " + AirWords.hectopascal(figure(notice, 0)) + " is lower than weather "
                    + "brings; if it was read at the rig, "
                    + new Remedy("leave --sea-level out", "leave the elevation empty").on(surface) + ".";
            case HUMIDITY_LEFT_OUT -> "Humidity was left out and the air taken as dry; at " + Numbers.percent(figure(notice, 0))
                    + " the factor is " + AirWords.percent(Math.abs(figure(notice, 1))) + " too "
                    + (figure(notice, 1) < 0 ? "low" : "high") + ", so give it, a dew point or a wet bulb.";
            case HUMIDITY_TOO_LOW -> "Air of " + Numbers.percent(figure(notice, 0)) + " relative humidity does not occur in a shop (common "
                    + "practice, no source); " + meant(figure(notice, 0)) + ".";
            case TEMPERATURE_LIKE_FAHRENHEIT -> "Air of " + AirWords.fixed(figure(notice, 0), 1, "°C") + " is rare; if "
                    + AirWords.fixed(figure(notice, 0), 1, "°F") + " was read, that is "
                    + AirWords.celsius(Units.FAHRENHEIT.toSi(figure(notice, 0))) + ".";
            case TEMPERATURE_OUTSIDE -> "The air, " + AirWords.celsius(figure(notice, 2)) + ", is outside the standard’s "
                    + AirWords.fixed(Units.CELSIUS.fromSi(figure(notice, 0)), 0, "") + " to "
                    + AirWords.fixed(Units.CELSIUS.fromSi(figure(notice, 1)), 0, "°C") + ", so no figure can be called corrected to it.";
            case DRY_PRESSURE_OUTSIDE -> "The pressure of the dry air, " + AirWords.hectopascal(figure(notice, 2))
                    + ", is outside the standard’s " + AirWords.fixed(figure(notice, 0) / 100, 0, "") + " to "
                    + AirWords.fixed(figure(notice, 1) / 100, 0, "hPa") + ", so no figure can be called corrected to it.";
            case FACTOR_OUTSIDE -> "The factor, " + AirWords.fixed(figure(notice, 2), 4, "") + ", is outside "
                    + AirWords.fixed(figure(notice, 0), 2, "") + " to " + AirWords.fixed(figure(notice, 1), 2, "")
                    + ": too much is being corrected for it to be trusted.";
            case BOOST_CAUTION -> "An engine under closed-loop boost control does not follow the air as the factor assumes, so it can "
                    + "correct twice; show corrected and uncorrected figures side by side.";
            case WITHDRAWN -> "This standard is withdrawn and reads high: in the same air SAE J1349 has a factor of "
                    + AirWords.fixed(figure(notice, 0), 4, "") + ".";
        };
    }

    /** A share of 0.5 typed as percent. */
    private static String meant(double share) {
        return share > 0 && share <= 0.01 ? Numbers.percent(100 * share) + " is likely meant, so type that" : "read the instrument again";
    }

    private static double figure(AirNotice notice, int place) {
        return notice.figures().get(place);
    }
}

package fairpull.io.table;

import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Units as exports write them: powers of a minute, thousands of them, and units of engine speed among the words of a header. */
final class UnitText {
    /** The ways to write revolutions per minute; they hold no word that {@link ColumnWords} could know. Common practice, no source. */
    private static final Pattern PER_MINUTE = Pattern.compile(
            "(?<![\\p{L}\\p{N}/])(?:(?:1|u|umdr\\.?|rev|r)\\s?/\\s?min|min\\s?(?:\\^?\\s?[-\u2212]|\u207b)\\s?[1\u00b9]|min\\^\\(-1\\))"
            + "(?![\\p{L}\\p{N}/])", Pattern.CASE_INSENSITIVE);
    private static final String TIMES = "\\s?[x×*·]\\s?";
    /** A unit in thousands: 1000 1/min, x1000 rpm, rpm x 1000, rpm/1000. Common practice, no source. */
    private static final Pattern THOUSANDS = Pattern.compile("(?:" + TIMES + ")?1[.,]?000(?:" + TIMES + "|\\s)?(?<behind>.+)"
            + "|(?<before>.+?)(?:" + TIMES + "|\\s?/\\s?)1[.,]?000", Pattern.CASE_INSENSITIVE);
    /** Among the words of a header a thousand counts with its sign of multiplication alone: “at 1000 rpm” is another thing. */
    private static final Pattern TIMES_A_THOUSAND = Pattern.compile(TIMES + "1[.,]?000(?![\\d.,])|(?<![\\d.,])1[.,]?000" + TIMES,
            Pattern.CASE_INSENSITIVE);
    private static final Pattern RPM = Pattern.compile("(?<!\\p{L})rpm(?!\\p{L})", Pattern.CASE_INSENSITIVE);

    private UnitText() {
    }

    /** {@return the unit that a text is} */
    static Optional<Unit> find(String text) {
        String stripped = text.strip();
        if (PER_MINUTE.matcher(stripped).matches()) {
            return Optional.of(Units.RPM);
        }
        Matcher thousands = THOUSANDS.matcher(stripped);
        if (thousands.matches()) {
            String one = thousands.group("behind") == null ? thousands.group("before") : thousands.group("behind");
            return find(one).filter(Units.RPM::equals).map(rpm -> Units.THOUSAND_RPM);
        }
        return Units.find(stripped);
    }

    /** {@return the unit of engine speed that stands among the words of a header} */
    static Optional<Unit> amongWords(String header) {
        boolean perMinute = PER_MINUTE.matcher(header).find();
        if ((perMinute || RPM.matcher(header).find()) && TIMES_A_THOUSAND.matcher(header).find()) {
            return Optional.of(Units.THOUSAND_RPM);
        }
        return perMinute ? Optional.of(Units.RPM) : Optional.empty();
    }
}

package fairpull.io.table;

import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.Optional;
import java.util.regex.Pattern;

/** Units as exports write them: powers of a minute, and units of engine speed among the words of a header. */
final class UnitText {
    /** The ways to write revolutions per minute; they hold no word that {@link ColumnWords} could know. Common practice, no source. */
    private static final Pattern PER_MINUTE = Pattern.compile(
            "(?<![\\p{L}\\p{N}/])(?:(?:1|u|umdr\\.?|rev|r)\\s?/\\s?min|min\\s?(?:\\^?\\s?[-\u2212]|\u207b)\\s?[1\u00b9]|min\\^\\(-1\\))"
            + "(?![\\p{L}\\p{N}/])", Pattern.CASE_INSENSITIVE);

    private UnitText() {
    }

    /** {@return the unit that a text is} */
    static Optional<Unit> find(String text) {
        String stripped = text.strip();
        return PER_MINUTE.matcher(stripped).matches() ? Optional.of(Units.RPM) : Units.find(stripped);
    }

    /** {@return the unit of engine speed that stands among the words of a header} */
    static Optional<Unit> amongWords(String header) {
        return PER_MINUTE.matcher(header).find() ? Optional.of(Units.RPM) : Optional.empty();
    }
}

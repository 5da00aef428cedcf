package fairpull.io.table;

import fairpull.domain.unit.Quantity;
import fairpull.domain.unit.Unit;
import fairpull.domain.unit.Units;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit that stands without brackets at the end of a header, as in “Speed km/h” or “Torque lb ft”.
 *
 * @param name what stands before it
 * @param text the unit as written
 * @param unit the unit
 */
record UnitAtEnd(String name, String text, Unit unit) {
    private static final Pattern SLASH = Pattern.compile("(?<=\\p{L})\\s*/\\s*(?=\\p{L})");
    private static final Pattern TWO_WORDS = Pattern.compile("(.*?)[\\s_,;:]+(\\p{L}+[\\s-]\\p{L}+)");
    private static final Pattern ONE_WORD = Pattern.compile("(.*?)[\\s_,;:]+(\\S+)");
    /** What a minimum, a channel or the speed of a peak may be called by, too. */
    private static final Set<Quantity> NEVER_PLAIN = EnumSet.of(Quantity.TIME, Quantity.ENGINE_SPEED);

    static Optional<UnitAtEnd> of(String header) {
        String joined = SLASH.matcher(header.strip()).replaceAll("/");
        return parted(TWO_WORDS, joined).or(() -> parted(ONE_WORD, joined));
    }

    private static Optional<UnitAtEnd> parted(Pattern pattern, String header) {
        Matcher parts = pattern.matcher(header);
        if (!parts.matches() || parts.group(1).isBlank()) {
            return Optional.empty();
        }
        String text = parts.group(2);
        return Units.find(text).or(() -> Units.find(text.replaceAll("\\s", "-"))).filter(unit -> !unit.equals(Units.ONE))
                .map(unit -> new UnitAtEnd(parts.group(1).strip(), text, unit));
    }

    /** {@return whether it can be nothing but a unit: a single letter may be the name of a channel, unless it is a volt} */
    boolean isPlain() {
        return !NEVER_PLAIN.contains(unit.quantity()) && (text.length() > 1 || unit.equals(Units.PERCENT) || unit.equals(Units.VOLT));
    }

    /** {@return whether it can be nothing but a speed, whatever stands before it} */
    boolean isRatioOfSpeed() {
        return unit.quantity() == Quantity.SPEED && text.contains("/") && !unit.equals(Units.METRE_PER_S);
    }

    /** {@return what the words before it say, where that is another thing than the unit measures} */
    Optional<Quantity> contradicted() {
        return isPlain() ? ColumnWords.of(name).quantity().filter(named -> named != unit.quantity()) : Optional.empty();
    }
}

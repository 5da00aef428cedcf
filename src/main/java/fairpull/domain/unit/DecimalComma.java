package fairpull.domain.unit;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A comma in a typed number: a decimal mark for some, a mark between thousands for others, so it is asked. */
public final class DecimalComma {
    private static final Pattern WITH_COMMA =
            Pattern.compile("(?<whole>[-+−]?\\d+),(?<digits>\\d+)(?<rest>(?:\\.\\d+)?(?:\\s?[^\\d,.].*)?)");
    private static final Pattern BEGINS = Pattern.compile("[-+−]?[\\d.]*,");

    private DecimalComma() {
    }

    /**
     * {@return what to say of a typed number that has a comma; empty where it has none} 214,3 has a decimal comma; 5,500 has one, or one
     * between thousands.
     */
    public static Optional<String> in(String text) {
        String typed = text.strip();
        if (!BEGINS.matcher(typed).lookingAt()) {
            return Optional.empty();
        }
        Matcher number = WITH_COMMA.matcher(typed);
        String written = "a figure such as 214.3 hp";
        if (number.matches()) {
            String digits = number.group("digits");
            String rest = number.group("rest");
            String together = number.group("whole") + digits + rest;
            String pointed = number.group("whole") + "." + digits + rest;
            written = rest.startsWith(".") ? together : digits.length() == 3 ? together + ", or " + pointed : pointed;
        }
        return Optional.of("“" + typed + "” has a comma in its number, and decimals stand behind a point here: write " + written);
    }
}

package fairpull.io.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A header cell taken apart.
 *
 * @param name what the column is called
 * @param unitText the unit that stands in brackets behind the name; empty where there is none
 */
record HeaderCell(String name, String unitText) {
    private static final Pattern NAME_AND_UNIT =
            Pattern.compile("(.*?)\\s*(?:\\(([^()]*)\\)|\\[([^\\[\\]]*)]|\\{([^{}]*)})\\s*", Pattern.DOTALL);

    static HeaderCell of(String cell) {
        Matcher parts = NAME_AND_UNIT.matcher(cell);
        if (!parts.matches()) {
            return new HeaderCell(cell.strip(), "");
        }
        return new HeaderCell(parts.group(1).strip(), bracketed(parts));
    }

    /** {@return a unit as it stands in a line of units, without its brackets} */
    static String unitOf(String cell) {
        Matcher parts = NAME_AND_UNIT.matcher(cell);
        return parts.matches() && parts.group(1).isEmpty() ? bracketed(parts) : cell.strip();
    }

    private static String bracketed(Matcher parts) {
        for (int group = 2; group <= parts.groupCount(); group++) {
            if (parts.group(group) != null) {
                return parts.group(group).strip();
            }
        }
        return "";
    }
}

package fairpull.report.write;

import fairpull.report.wording.Said;
import java.util.List;

/** Text for a terminal, broken into lines. */
final class Lines {
    /** Readable at a hundred columns. */
    static final int COLUMNS = 98;
    private static final int HEAD = 38;

    private Lines() {
    }

    /** {@return the text in lines of at most {@link #COLUMNS}, each indented and ended} */
    static String wrapped(String text, String indent) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.strip().split("[ \\t\\r\\n]+")) {
            boolean begun = line.length() > indent.length();
            if (begun && line.length() + 1 + word.length() > COLUMNS) {
                lines.append(line).append('\n');
                line = new StringBuilder(indent);
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
        }
        return lines.append(line).append('\n').toString();
    }

    /** {@return answers as rows: a head with its text beside it, or beneath where the head is long} */
    static String rows(List<Said> said) {
        StringBuilder rows = new StringBuilder();
        for (Said row : said) {
            boolean fits = row.head().length() <= HEAD - 2;
            String first = fits ? row.head() + " ".repeat(HEAD - row.head().length()) : wrapped(row.head(), "");
            String text = wrapped(row.text(), " ".repeat(HEAD));
            rows.append(first).append(fits ? text.substring(HEAD) : text);
        }
        return rows.toString();
    }
}

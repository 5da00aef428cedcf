package fairpull.report.write;

/** Text for a terminal, broken into lines. */
final class Lines {
    /** Readable at a hundred columns. */
    static final int COLUMNS = 98;

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
}

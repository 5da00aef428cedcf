package fairpull.io.table;

import java.util.List;

/** What separates the cells of a row. */
public enum Delimiter {
    SEMICOLON(';', "semicolon"),
    TAB('\t', "tab"),
    COMMA(',', "comma"),
    /** Columns under each other, kept apart by blanks; {@link FixedWidth} sets a tab between their cells. */
    BLANKS('\t', "blanks");

    /** The delimiters that are a character of the file. */
    static final List<Delimiter> CHARACTERS = List.of(SEMICOLON, TAB, COMMA);

    private final char symbol;
    private final String words;

    Delimiter(char symbol, String words) {
        this.symbol = symbol;
        this.words = words;
    }

    /** {@return the character} */
    public char symbol() {
        return symbol;
    }

    /** {@return its name in running text} */
    public String words() {
        return words;
    }
}

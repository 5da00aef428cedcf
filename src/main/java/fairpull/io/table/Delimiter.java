package fairpull.io.table;

/** What separates the cells of a row. */
public enum Delimiter {
    SEMICOLON(';', "semicolon"),
    TAB('\t', "tab"),
    COMMA(',', "comma");

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

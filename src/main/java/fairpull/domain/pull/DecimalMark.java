package fairpull.domain.pull;

/** The character before the decimals of a number. */
public enum DecimalMark {
    POINT('.', ','),
    COMMA(',', '.');

    private final char symbol;
    private final char grouping;

    DecimalMark(char symbol, char grouping) {
        this.symbol = symbol;
        this.grouping = grouping;
    }

    /** {@return the mark itself} */
    public char symbol() {
        return symbol;
    }

    /** {@return the mark that groups thousands beside it} */
    public char grouping() {
        return grouping;
    }

    /** {@return the name used on the command line} */
    public String id() {
        return this == POINT ? "point" : "comma";
    }
}

package fairpull.domain.air;

/** How an engine gets its air. */
public enum Induction {
    NATURAL("na", "naturally aspirated"),
    SUPERCHARGED("supercharged", "supercharged"),
    TURBOCHARGED("turbocharged", "turbocharged");

    private final String id;
    private final String words;

    Induction(String id, String words) {
        this.id = id;
        this.words = words;
    }

    /** {@return the name on the command line} */
    public String id() {
        return id;
    }

    /** {@return the name in running text} */
    public String words() {
        return words;
    }

    /** {@return whether a compressor feeds the engine} */
    public boolean isBoosted() {
        return this != NATURAL;
    }
}

package fairpull.report.chart;

/** What a shape stands for. Colour follows from it and only repeats what position, line or letter already says. */
public enum Role {
    /** The ground between cards. */
    PAPER("paper"),
    /** The ground under text and charts. */
    CARD("card"),
    /** Text, zero lines, and what is chosen or shown. */
    INK("ink"),
    /** Text of lesser weight. */
    SOFT("soft"),
    /** Rules and grid lines. */
    LINE("line"),
    /** Part A: open, thin line. */
    A("a"),
    /** Part B: hatched. */
    B("b"),
    /** The ground under the hatching of B. */
    B_FILL("b-fill"),
    /** Gates and the ends of the worthwhile zone. */
    GATE("gate"),
    /** The inside of a gate and of the zone that does not matter. */
    GATE_FILL("gate-fill"),
    /** One pull of A behind the mean of many. */
    A_FAINT("a-faint"),
    /** One pull of B behind the mean of many. */
    B_FAINT("b-faint"),
    /** The inside of the band around a change. */
    BAND("band");

    private final String token;

    Role(String token) {
        this.token = token;
    }

    /** {@return the name of its colour in style sheets} */
    public String token() {
        return token;
    }
}

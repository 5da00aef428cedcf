package fairpull.domain.audit;

/** What is refused of one part of a publication, so that a reader of files can tell its line. */
public final class RefusedPart extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final String part;

    /**
     * Refuses a part.
     *
     * @param part names and places from the publication down, such as {@code claims/0/gain}
     * @param reason why, in words for people
     */
    public RefusedPart(String part, String reason) {
        super(reason);
        this.part = part;
    }

    /** {@return which part it is: names and places from the publication down} */
    public String part() {
        return part;
    }
}

package fairpull.domain.audit;

/** What was disclosed cannot all be so. The message says why, and the item is the one to look at first. */
public final class Contradiction extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final Item item;

    /** What may be against something else. */
    public enum Item {
        PULLS_BEFORE, PULLS_AFTER, RETURNED, STRAP_DOWN, DAY, ALSO_CHANGED
    }

    Contradiction(Item item, String words) {
        super(words);
        this.item = item;
    }

    /** {@return which item of the procedure} */
    public Item item() {
        return item;
    }
}

package fairpull.ui.page.limits;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;

/** Gives a logged cool-down to the page of limits, as its button does once a file was chosen. */
public final class CoolDowns {
    private CoolDowns() {
    }

    /** Takes a log into the card of heat somewhere within a component. */
    public static void take(Component within, Path log) {
        if (within instanceof HeatCard card) {
            card.take(log);
        } else if (within instanceof Container container) {
            for (Component child : container.getComponents()) {
                take(child, log);
            }
        }
    }
}

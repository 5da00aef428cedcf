package fairpull.domain.plan;

import fairpull.domain.unit.Unit;
import java.util.Objects;

/**
 * A number that is compared between A and B.
 *
 * @param name what it is called, unique within the plan
 * @param definition how the value of a pull comes about
 * @param unit the unit in which people read it
 * @param correction the standard that its values are brought to
 * @param better which direction is a gain
 */
public record Measure(String name, Definition definition, Unit unit, Correction correction, Better better) {
    public Measure {
        Checks.named("a measure", name);
        Objects.requireNonNull(correction, "correction");
        Objects.requireNonNull(better, "better");
        if (unit.quantity() != definition.quantity()) {
            throw new IllegalArgumentException("measure " + name + " is a " + definition.quantity().words()
                    + " and cannot be read in " + unit.symbol());
        }
    }
}

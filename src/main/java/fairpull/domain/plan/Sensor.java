package fairpull.domain.plan;

import fairpull.domain.unit.Quantity;
import java.util.Objects;

/**
 * A sensor and its standard uncertainty.
 *
 * @param name which one
 * @param quantity what it reads
 * @param uncertaintySi one standard deviation of its error
 */
public record Sensor(String name, Quantity quantity, double uncertaintySi) {
    public Sensor {
        Checks.named("a sensor", name);
        Objects.requireNonNull(quantity, "the quantity of sensor " + name);
        Checks.notNegative("the uncertainty of sensor " + name, uncertaintySi);
    }
}

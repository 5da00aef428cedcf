package fairpull.domain.unit;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The largest values that anything tested on a roller, a hub or an engine bench comes near. Beyond them stands a wrong unit, a wrong column
 * or a typing mistake: 5 MW (the largest rollers take about half of it), 100 kN·m (hubs in a low gear take a fifth), 100,000 rpm (small
 * electric motors turn half as fast), 1500 km/h. Common practice, no source; each is wide on purpose.
 */
public final class Plausible {
    private static final Map<Quantity, Double> MOST_SI = new EnumMap<>(Map.of(
            Quantity.POWER, Units.KILOWATT.toSi(5000),
            Quantity.TORQUE, Units.NEWTON_METRE.toSi(100_000),
            Quantity.ENGINE_SPEED, Units.RPM.toSi(100_000),
            Quantity.SPEED, Units.KM_PER_HOUR.toSi(1500)));

    private Plausible() {
    }

    /** {@return the largest size of a quantity that is believed, in SI; empty where any is} */
    public static OptionalDouble mostSi(Quantity quantity) {
        Double most = MOST_SI.get(quantity);
        return most == null ? OptionalDouble.empty() : OptionalDouble.of(most);
    }
}

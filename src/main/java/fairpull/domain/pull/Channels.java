package fairpull.domain.pull;

import fairpull.domain.unit.Quantity;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The channels of one pull in SI, row by row in the order of the export, one a quantity. */
public final class Channels {
    private final Map<Quantity, Samples> byQuantity;

    /**
     * Makes channels of equal length.
     *
     * @throws IllegalArgumentException if there is none, or if their lengths differ
     */
    public Channels(Map<Quantity, Samples> byQuantity) {
        if (byQuantity.isEmpty() || byQuantity.values().stream().mapToInt(Samples::size).distinct().count() != 1) {
            throw new IllegalArgumentException("a pull needs channels of equal length");
        }
        this.byQuantity = new EnumMap<>(byQuantity);
    }

    /** {@return the samples of a quantity, if the export has them} */
    public Optional<Samples> find(Quantity quantity) {
        return Optional.ofNullable(byQuantity.get(quantity));
    }

    /** {@return how many rows there are} */
    public int rows() {
        return byQuantity.values().iterator().next().size();
    }

    /** {@return these channels but for one, which must not be the only one} */
    public Channels without(Quantity quantity) {
        Map<Quantity, Samples> others = new EnumMap<>(byQuantity);
        return others.remove(quantity) == null ? this : new Channels(others);
    }

    /** {@return the rows of these channels in which one of them is known} */
    public Channels known(Quantity quantity) {
        Samples asked = byQuantity.get(quantity);
        if (asked == null || asked.stream().allMatch(Double::isFinite)) {
            return this;
        }
        int[] rows = IntStream.range(0, rows()).filter(row -> Double.isFinite(asked.at(row))).toArray();
        Map<Quantity, Samples> known = new EnumMap<>(Quantity.class);
        byQuantity.forEach((each, samples) -> known.put(each, Samples.of(Arrays.stream(rows).mapToDouble(samples::at).toArray())));
        return new Channels(known);
    }

    /** {@return all channels} */
    public Map<Quantity, Samples> all() {
        return Map.copyOf(byQuantity);
    }
}

package fairpull.engine.judging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Adjusts p-values of several measures so that the chance of any false difference among them stays at the error rate.
 *
 * @see "Holm (1979), A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6, 65–70"
 */
public final class Holm {
    private Holm() {
    }

    /**
     * The adjusted p-values: the k-th smallest of m times m − k + 1, at least the one before it, at most 1.
     *
     * @param pValues in [0, 1]; empty ones stay empty and do not count
     * @return in the order given
     */
    public static List<OptionalDouble> adjust(List<OptionalDouble> pValues) {
        List<Integer> ascending = IntStream.range(0, pValues.size()).filter(i -> pValues.get(i).isPresent()).boxed()
                .sorted(Comparator.comparingDouble(i -> pValues.get(i).getAsDouble())).toList();
        List<OptionalDouble> adjusted = new ArrayList<>(pValues);
        double largest = 0;
        for (int k = 0; k < ascending.size(); k++) {
            double p = pValues.get(ascending.get(k)).getAsDouble();
            largest = Math.max(largest, Math.min(1, p * (ascending.size() - k)));
            adjusted.set(ascending.get(k), OptionalDouble.of(largest));
        }
        return List.copyOf(adjusted);
    }
}

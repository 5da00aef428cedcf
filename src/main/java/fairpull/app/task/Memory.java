package fairpull.app.task;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * Remembers what was made of what, up to a total weight; what was not asked for longest is forgotten first. For use by several threads:
 * two that ask for the same thing at once may both make it.
 *
 * @param <K> all that the value depends on
 * @param <V> never changes
 */
public final class Memory<K, V> {
    private final long most;
    private final ToLongFunction<V> weight;
    private final Map<K, V> kept = new LinkedHashMap<>(16, 0.75f, true);
    private long total;

    /** Remembers values up to a total weight. */
    public Memory(long most, ToLongFunction<V> weight) {
        this.most = most;
        this.weight = weight;
    }

    /** {@return the value of a key: as it is remembered, else made now; a fault in making it is not remembered} */
    public V of(K key, Supplier<V> making) {
        synchronized (kept) {
            V known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        V made = making.get();
        keep(key, made);
        return made;
    }

    private void keep(K key, V value) {
        long own = weight.applyAsLong(value);
        if (own > most) {
            return;
        }
        synchronized (kept) {
            V before = kept.put(key, value);
            total += own - (before == null ? 0 : weight.applyAsLong(before));
            Iterator<V> oldest = kept.values().iterator();
            while (total > most) {
                total -= weight.applyAsLong(oldest.next());
                oldest.remove();
            }
        }
    }
}

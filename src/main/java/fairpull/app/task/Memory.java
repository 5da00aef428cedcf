package fairpull.app.task;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * Remembers what was made of what, up to a total weight; what was not asked for longest is forgotten first. For use by several threads: one
 * that asks for what another is making waits for it.
 *
 * @param <K> all that the value depends on
 * @param <V> never changes
 */
public final class Memory<K, V> {
    private final long most;
    private final ToLongFunction<V> weight;
    /** Values that are there or being made; what is being made weighs nothing yet. */
    private final Map<K, CompletableFuture<V>> kept = new LinkedHashMap<>(16, 0.75f, true);
    private long total;

    /** Remembers values up to a total weight. */
    public Memory(long most, ToLongFunction<V> weight) {
        this.most = most;
        this.weight = weight;
    }

    /** {@return the value of a key: as it is remembered, else made now; a fault in making it is told and not remembered} */
    public V of(K key, Supplier<V> making) {
        CompletableFuture<V> own = new CompletableFuture<>();
        CompletableFuture<V> known;
        synchronized (kept) {
            known = kept.putIfAbsent(key, own);
        }
        if (known != null) {
            return waitedFor(known);
        }
        try {
            V made = making.get();
            keep(key, own, made);
            return made;
        } catch (RuntimeException | Error fault) {
            synchronized (kept) {
                kept.remove(key, own);
            }
            own.completeExceptionally(fault);
            throw fault;
        }
    }

    private static <V> V waitedFor(CompletableFuture<V> known) {
        try {
            return known.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(failed.getCause());
        }
    }

    private void keep(K key, CompletableFuture<V> own, V made) {
        synchronized (kept) {
            own.complete(made);
            total += weight.applyAsLong(made);
            if (weight.applyAsLong(made) > most) {
                forget(made);
                kept.remove(key, own);
            }
            Iterator<CompletableFuture<V>> oldest = kept.values().iterator();
            while (total > most) {
                CompletableFuture<V> next = oldest.next();
                if (next.isDone()) {
                    forget(next.join());
                    oldest.remove();
                }
            }
        }
    }

    private void forget(V value) {
        total -= weight.applyAsLong(value);
    }
}

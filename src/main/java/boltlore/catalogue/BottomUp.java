package boltlore.catalogue;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What things come to that are made of others: each is worked out once, after all that it is made of. Takes as long as
 * the graph is large, however much is shared in it and however deep it is: there is no recursion.
 *
 * @param <K> things whose graph has no cycle
 */
public final class BottomUp<K, V> {

    private final Map<K, V> known;
    private final Function<? super K, ? extends Collection<? extends K>> parts;
    private final Function<? super K, ? extends V> step;

    private record Open<K>(K key, Iterator<? extends K> parts) {}

    /**
     * Looks and keeps.
     *
     * @param known what is worked out already, and where the rest is kept
     * @param parts what a thing is made of
     * @param step what it comes to; may ask for its parts, which are known then
     */
    public BottomUp(
            Map<K, V> known,
            Function<? super K, ? extends Collection<? extends K>> parts,
            Function<? super K, ? extends V> step) {
        this.known = known;
        this.parts = parts;
        this.step = step;
    }

    public V of(K key) {
        V there = known.get(key);
        return there == null ? worked(key) : there;
    }

    private V worked(K key) {
        Deque<Open<K>> open = new ArrayDeque<>();
        open.push(opened(key));
        @Nullable V last = null;
        while (!open.isEmpty()) {
            Open<K> top = open.peek();
            if (top.parts().hasNext()) {
                K part = top.parts().next();
                if (!known.containsKey(part)) {
                    open.push(opened(part));
                }
            } else {
                open.pop();
                last = step.apply(top.key());
                known.put(top.key(), last);
            }
        }
        return Objects.requireNonNull(last);
    }

    private Open<K> opened(K key) {
        return new Open<>(key, parts.apply(key).iterator());
    }
}

package boltlore.catalogue.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Lists as maps in the same order; of two with one name, which is a fault elsewhere, the first stays. */
final class Keyed {

    private Keyed() {}

    static <K, V> Map<K, V> by(List<V> all, Function<V, K> key) {
        Map<K, V> keyed = new LinkedHashMap<>();
        all.forEach(value -> keyed.putIfAbsent(key.apply(value), value));
        return Collections.unmodifiableMap(keyed);
    }
}

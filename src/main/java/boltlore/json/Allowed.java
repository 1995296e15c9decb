package boltlore.json;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** The written names of a closed set of values, in their order. */
public record Allowed<E>(Map<String, E> byName) implements Shape {

    /** Values under the names that they give themselves. */
    public static <E> Allowed<E> of(E[] values, Function<E, String> written) {
        Map<String, E> byName = new LinkedHashMap<>();
        Arrays.stream(values).forEach(value -> byName.put(written.apply(value), value));
        return new Allowed<>(byName);
    }

    /** Constants under their own names in small letters. */
    public static <E extends Enum<E>> Allowed<E> of(E[] values) {
        return of(values, value -> value.name().toLowerCase(Locale.ROOT));
    }

    /** Texts as they are. */
    public static Allowed<String> of(String... texts) {
        return of(texts, Function.identity());
    }

    String says() {
        return String.join(", ", byName.keySet());
    }
}

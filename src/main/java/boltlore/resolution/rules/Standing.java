package boltlore.resolution.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The facts and conclusions of a session at one moment, by type. */
public final class Standing {

    private final Map<Class<?>, List<Object>> byType = new HashMap<>();

    Standing(Collection<?> objects) {
        for (Object object : objects) {
            byType.computeIfAbsent(object.getClass(), type -> new ArrayList<>()).add(object);
        }
    }

    /** All of that type, in no particular order. */
    public <T> List<T> all(Class<T> type) {
        return byType.getOrDefault(type, List.of()).stream().map(type::cast).toList();
    }
}

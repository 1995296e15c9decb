package boltlore.proof;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Records with one component changed. */
public final class Altered {

    private Altered() {}

    /** The same record but for one component. */
    public static <R extends Record> R with(R original, String component, Object value) {
        RecordComponent[] components = original.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        boolean found = false;
        try {
            for (int i = 0; i < components.length; i++) {
                boolean here = components[i].getName().equals(component);
                found |= here;
                values[i] = here ? value : components[i].getAccessor().invoke(original);
            }
            if (!found) {
                throw new IllegalArgumentException(original.getClass() + " has no component " + component);
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            Constructor<R> constructor = (Constructor<R>) original.getClass().getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (IllegalAccessException
                | InvocationTargetException
                | NoSuchMethodException
                | InstantiationException e) {
            throw new LinkageError(e.getMessage(), e);
        }
    }
}

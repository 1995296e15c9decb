package boltlore.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What no valid order may do.
 *
 * @param because the sentence shown to people, in full
 * @param source where it is more than the workshop's own decision
 * @param when the case that the limit speaks of
 * @param then what must hold in that case; null where the case itself is forbidden
 */
public record Limit(
        String name,
        String because,
        @Nullable String source,
        Condition when,
        @Nullable Condition then) {

    /** What the limit forbids, as one condition over options. */
    public Condition forbids() {
        return then == null ? when : new Condition.All(List.of(when, new Condition.Not(then)));
    }
}

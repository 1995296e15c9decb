package boltlore.trades.costing.path;

import java.util.List;

/**
 * Something that takes time.
 *
 * @param days that it takes, 0 or more
 * @param after what must be finished before it begins
 */
public record Activity<T>(T what, int days, List<T> after) {

    public Activity {
        after = List.copyOf(after);
        if (days < 0) {
            throw new IllegalArgumentException(what + " takes " + days + " days");
        }
    }
}

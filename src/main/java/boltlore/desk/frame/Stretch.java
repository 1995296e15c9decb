package boltlore.desk.frame;

import java.util.List;
import java.util.function.Function;

/**
 * A part of a long list: no page is longer than somebody reads at a stand.
 *
 * @param rows those that are shown
 * @param first how many stand before them
 * @param all how many there are
 * @param most how many are shown at once
 * @param path address of the page, with a query begun
 */
public record Stretch<T>(List<T> rows, int first, int all, int most, String path) {

    /** Field of the query that says how many rows are left out at the beginning. */
    public static final String FROM = "from";

    public Stretch {
        rows = List.copyOf(rows);
    }

    /** The part that the call asks for; where it asks for none, or for what is not there any more, the first or the last. */
    public static <T> Stretch<T> of(List<T> all, Call call, int most, String path) {
        String said = call.said(FROM);
        int asked = said.matches("[0-9]{1,7}") ? Integer.parseInt(said) : 0;
        int last = all.isEmpty() ? 0 : (all.size() - 1) / most * most;
        int first = Math.min(asked / most * most, last);
        return new Stretch<>(all.subList(first, Math.min(first + most, all.size())), first, all.size(), most, path);
    }

    /** The same part with its rows worked out, which is done for none but those that are shown. */
    public <R> Stretch<R> map(Function<T, R> row) {
        return new Stretch<>(rows.stream().map(row).toList(), first, all, most, path);
    }

    public boolean isWhole() {
        return rows.size() == all;
    }

    public boolean hasEarlier() {
        return first > 0;
    }

    public boolean hasMore() {
        return first + rows.size() < all;
    }

    /** Where the rows begin that stand before these, or after them. */
    public String earlier() {
        return path + "&" + FROM + "=" + Math.max(0, first - most);
    }

    public String more() {
        return path + "&" + FROM + "=" + (first + most);
    }

    /** '41 to 80 of 312'. */
    public String says() {
        return (first + 1) + " to " + (first + rows.size()) + " of " + all;
    }
}

package boltlore.bring;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Rows that two people edited, each on their own: what one of them touched is taken, what both touched otherwise is told.
 *
 * @param base as it was before both
 * @param there as it is in the catalogue now
 */
record RowMerge(Map<String, SortedMap<String, String>> base, Map<String, SortedMap<String, String>> there) {

    /**
     * What both have made otherwise.
     *
     * @param key of the cell; empty where the row is gone on one side
     * @param here what the workbook says, and {@code there} what the catalogue does; null where it is gone
     */
    record Clash(
            String row,
            String key,
            @Nullable String before,
            @Nullable String here,
            @Nullable String there) {}

    /** The rows as both want them, in the order of the workbook; where they clash, as they are in the catalogue. */
    Map<String, SortedMap<String, String>> with(Map<String, SortedMap<String, String>> here, Consumer<Clash> clashes) {
        Map<String, SortedMap<String, String>> merged = new LinkedHashMap<>();
        here.forEach((name, row) -> of(name, row, clashes).ifPresent(both -> merged.put(name, both)));
        there.forEach((name, row) -> {
            if (!here.containsKey(name)) {
                of(name, null, clashes).ifPresent(both -> merged.put(name, both));
            }
        });
        return merged;
    }

    private Optional<SortedMap<String, String>> of(
            String name, @Nullable SortedMap<String, String> here, Consumer<Clash> clashes) {
        SortedMap<String, String> before = base.get(name);
        SortedMap<String, String> now = there.get(name);
        if (here == null || now == null) {
            SortedMap<String, String> kept = here == null ? now : here;
            boolean untouched = before != null && kept != null && plain(kept).equals(plain(before));
            if (before != null && kept != null && !untouched) {
                clashes.accept(new Clash(name, "", "", here == null ? null : "", now == null ? null : ""));
                return Optional.ofNullable(now);
            }
            return untouched ? Optional.empty() : Optional.ofNullable(kept);
        }
        SortedMap<String, String> was = before == null ? new TreeMap<>() : before;
        SortedMap<String, String> both = new TreeMap<>(now);
        TreeSet<String> keys = new TreeSet<>(here.keySet());
        keys.addAll(was.keySet());
        keys.removeIf(FamilyRows::tells);
        for (String key : keys) {
            String mine = here.getOrDefault(key, "");
            String theirs = now.getOrDefault(key, "");
            String old = was.getOrDefault(key, "");
            if (!mine.equals(old) && !mine.equals(theirs) && !theirs.equals(old)) {
                clashes.accept(new Clash(name, key, old, mine, theirs));
            } else if (!mine.equals(old)) {
                both.put(key, mine);
            }
        }
        return Optional.of(both);
    }

    private static SortedMap<String, String> plain(SortedMap<String, String> row) {
        SortedMap<String, String> plain = new TreeMap<>(row);
        plain.keySet().removeIf(FamilyRows::tells);
        return plain;
    }
}

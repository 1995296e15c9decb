package boltlore.report.xlsx;

import boltlore.report.Page;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A page with every cell at its place.
 *
 * @param tables by name
 * @param mainTable name of the widest table, or empty
 * @param particulars spot of each value, by the block's name and the particular's key
 */
record LaidPage(
        Page page,
        Grid grid,
        List<LaidRow> rows,
        Map<String, LaidTable> tables,
        Map<String, Map<String, Spot>> particulars,
        List<LaidChart> charts,
        List<LaidPicture> pictures,
        String mainTable) {

    record Spot(int column, int row) {}

    boolean has(String table) {
        return tables.containsKey(table);
    }

    LaidTable table(String name) {
        return Objects.requireNonNull(tables.get(name), name);
    }

    Spot spot(String block, String key) {
        return Objects.requireNonNull(
                Objects.requireNonNull(particulars.get(block), block).get(key), key);
    }

    /** The table whose heading row stays in view and is repeated on every sheet. */
    Optional<LaidTable> main() {
        return Optional.ofNullable(tables.get(mainTable));
    }
}

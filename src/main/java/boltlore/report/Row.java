package boltlore.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A row of a table.
 *
 * @param key unique in the table where a formula refers to the row, else empty
 * @param group name of the group that a plain row counts in, or that a group heading or sub-total belongs to; or empty
 * @param words of a group heading, sub-total or total, from the left edge up to the first filled cell
 * @param cells as many as the table has columns
 * @param remarks by the column of the cell that they hang on, shown where somebody points at it; on no paper
 * @param codes by key, for programs alone: what a word on the sheet is called in the catalogue
 */
public record Row(
        RowKind kind,
        String key,
        String group,
        String words,
        List<Cell> cells,
        Map<String, String> remarks,
        Map<String, String> codes) {

    public enum RowKind {
        PLAIN(Look.PLAIN),
        GROUP(Look.GROUP),
        SUBTOTAL(Look.SUBTOTAL),
        TOTAL(Look.TOTAL);

        private final Look look;

        RowKind(Look look) {
            this.look = look;
        }

        public Look look() {
            return look;
        }
    }

    public Row {
        cells = List.copyOf(cells);
        remarks = kept(remarks);
        codes = kept(codes);
    }

    /** Hardly any row has one, and a kit has ten thousand rows. */
    private static Map<String, String> kept(Map<String, String> inOrder) {
        return inOrder.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(inOrder));
    }

    public boolean isPlain() {
        return kind == RowKind.PLAIN;
    }

    /** How many cells from the left the words may cover: up to the first filled one, at least one. */
    public int wordsCover() {
        int free = 0;
        while (free < cells.size() && cells.get(free) == Cell.EMPTY) {
            free++;
        }
        return Math.max(1, free);
    }
}

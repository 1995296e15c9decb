package boltlore.netting;

import boltlore.measure.PartNumber;
import java.util.Comparator;

/**
 * What stock tells apart.
 *
 * @param finish that it lies there in; empty where it is bare or not coated at all
 */
public record StockItem(PartNumber part, String finish) implements Comparable<StockItem> {

    private static final Comparator<StockItem> BY_NUMBER =
            Comparator.comparing(StockItem::part).thenComparing(StockItem::finish);

    public static StockItem bare(PartNumber part) {
        return new StockItem(part, "");
    }

    @Override
    public int compareTo(StockItem other) {
        return BY_NUMBER.compare(this, other);
    }

    @Override
    public String toString() {
        return finish.isEmpty() ? part.text() : part.text() + " in " + finish;
    }
}

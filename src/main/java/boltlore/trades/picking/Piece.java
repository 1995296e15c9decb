package boltlore.trades.picking;

import boltlore.bill.Item;
import boltlore.measure.PartNumber;
import java.util.Comparator;

/** What stores tell apart: a part in a finish. */
record Piece(PartNumber part, String finish) implements Comparable<Piece> {

    private static final Comparator<Piece> BY_NUMBER =
            Comparator.comparing(Piece::part).thenComparing(Piece::finish);

    static Piece of(Item item) {
        return new Piece(item.part().number(), item.finish());
    }

    static Piece of(BagRow row) {
        return new Piece(row.part().number(), row.finish());
    }

    @Override
    public int compareTo(Piece other) {
        return BY_NUMBER.compare(this, other);
    }
}

package boltlore.answers;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What changes from one order's kit to another's.
 *
 * @param massKgDifference of the second over the first
 */
public record Comparison(
        SortedMap<Piece, Change> changes,
        SortedSet<Finding> findingsGone,
        SortedSet<Finding> findingsNew,
        BigDecimal massKgDifference) {

    /**
     * What stores keep apart: the same part of another revision or in another finish is another piece.
     *
     * @param finish that it takes, or empty where it is not coated
     */
    public record Piece(PartNumber part, String revision, String finish) implements Comparable<Piece> {

        private static final Comparator<Piece> ORDER =
                Comparator.comparing(Piece::part).thenComparing(Piece::revision).thenComparing(Piece::finish);

        static Piece of(Item item) {
            return new Piece(item.part().number(), item.part().revision(), item.coated() ? item.finish() : "");
        }

        @Override
        public int compareTo(Piece other) {
            return ORDER.compare(this, other);
        }
    }

    /** Quantities in the first and the second kit; zero where the piece is not in. */
    public record Change(BigDecimal before, BigDecimal after) {

        public boolean added() {
            return before.signum() == 0;
        }

        public boolean removed() {
            return after.signum() == 0;
        }
    }

    public static Comparison of(Bill first, Bill second) {
        return new Comparison(
                changes(pieces(first), pieces(second)),
                missing(first.resolved().findings(), second.resolved().findings()),
                missing(second.resolved().findings(), first.resolved().findings()),
                Masses.kitKg(second).subtract(Masses.kitKg(first)));
    }

    private static SortedMap<Piece, BigDecimal> pieces(Bill bill) {
        SortedMap<Piece, BigDecimal> sums = new TreeMap<>();
        bill.all().forEach(item -> sums.merge(Piece.of(item), item.quantity(), BigDecimal::add));
        return sums;
    }

    private static SortedMap<Piece, Change> changes(
            SortedMap<Piece, BigDecimal> before, SortedMap<Piece, BigDecimal> after) {
        SortedSet<Piece> pieces = new TreeSet<>(before.keySet());
        pieces.addAll(after.keySet());
        SortedMap<Piece, Change> changes = new TreeMap<>();
        for (Piece piece : pieces) {
            BigDecimal was = before.getOrDefault(piece, BigDecimal.ZERO);
            BigDecimal is = after.getOrDefault(piece, BigDecimal.ZERO);
            if (was.compareTo(is) != 0) {
                changes.put(piece, new Change(was, is));
            }
        }
        return changes;
    }

    private static SortedSet<Finding> missing(SortedSet<Finding> from, SortedSet<Finding> in) {
        SortedSet<Finding> rest = new TreeSet<>(from);
        rest.removeAll(in);
        return rest;
    }
}

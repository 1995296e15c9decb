package boltlore.book;

import boltlore.json.JsonOut;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What comes into a kit and goes out of it from one to another, each piece summed over its places.
 *
 * @param changes only where quantities differ, by piece
 */
public record KitDifference(List<Change> changes) {

    /** What stores keep apart: another revision or finish of a part is another piece. */
    public record Piece(String part, String revision, String finish) implements Comparable<Piece> {

        private static final Comparator<Piece> ORDER =
                Comparator.comparing(Piece::part).thenComparing(Piece::revision).thenComparing(Piece::finish);

        @Override
        public int compareTo(Piece other) {
            return ORDER.compare(this, other);
        }

        @Override
        public String toString() {
            return part + " rev. " + revision + (finish.isEmpty() ? "" : ", " + finish);
        }
    }

    /** Quantities in the first and the second kit, 0 where the piece is not in. */
    public record Change(Piece piece, String unit, BigDecimal before, BigDecimal after) {

        public boolean comesIn() {
            return after.compareTo(before) > 0;
        }

        /** How much comes in, or goes out. */
        public BigDecimal amount() {
            return after.subtract(before).abs();
        }

        public JsonOut.Members json() {
            return JsonOut.object()
                    .put("part", piece.part())
                    .put("revision", piece.revision())
                    .putIfAny("finish", piece.finish())
                    .put("before", before)
                    .put("after", after)
                    .put("unit", unit);
        }

        /** 'comes in: 2 each PV-CR-E rev. B, cream'. */
        @Override
        public String toString() {
            return (comesIn() ? "comes in: " : "goes out: ") + amount().toPlainString() + " " + unit + " " + piece;
        }
    }

    public KitDifference {
        changes = List.copyOf(changes);
    }

    public static KitDifference of(List<KitLine> before, List<KitLine> after) {
        Map<Piece, BigDecimal> was = sums(before);
        Map<Piece, BigDecimal> is = sums(after);
        Map<String, String> units = new TreeMap<>();
        before.forEach(line -> units.put(line.part(), line.unit()));
        after.forEach(line -> units.put(line.part(), line.unit()));
        TreeSet<Piece> all = new TreeSet<>(was.keySet());
        all.addAll(is.keySet());
        List<Change> changes = new ArrayList<>();
        for (Piece piece : all) {
            BigDecimal first = was.getOrDefault(piece, BigDecimal.ZERO);
            BigDecimal second = is.getOrDefault(piece, BigDecimal.ZERO);
            if (first.compareTo(second) != 0) {
                changes.add(new Change(piece, units.getOrDefault(piece.part(), ""), first, second));
            }
        }
        return new KitDifference(changes);
    }

    /** Quantities of all pieces. */
    public static Map<Piece, BigDecimal> sums(List<KitLine> lines) {
        Map<Piece, BigDecimal> sums = new TreeMap<>();
        lines.forEach(line ->
                sums.merge(new Piece(line.part(), line.revision(), line.finish()), line.quantity(), BigDecimal::add));
        return sums;
    }
}

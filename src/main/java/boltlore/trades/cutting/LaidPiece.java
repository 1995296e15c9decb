package boltlore.trades.cutting;

import boltlore.catalogue.Cut;
import java.math.BigDecimal;

/**
 * A piece at its place on a bar.
 *
 * @param cut what is cut, of which this is one
 * @param fromMm where it begins, its outermost point, from the untrimmed head of the bar
 * @param left its end towards the head
 * @param right its end towards the tail
 */
public record LaidPiece(PieceSet set, Cut cut, BigDecimal fromMm, LaidEnd left, LaidEnd right) {

    public BigDecimal toMm() {
        return fromMm.add(cut.lengthMm());
    }

    /**
     * One end as it lies on the saw.
     *
     * @param degrees slant from square, 0 or more
     * @param lean 1 where its upper corner is nearer to the tail than its lower, -1 where it is nearer to the head; 0 square
     */
    public record LaidEnd(BigDecimal degrees, int lean) {

        public static final LaidEnd SQUARE = new LaidEnd(BigDecimal.ZERO, 0);
    }
}

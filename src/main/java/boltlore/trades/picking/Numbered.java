package boltlore.trades.picking;

import boltlore.catalogue.Part;
import boltlore.catalogue.Tracked;
import java.math.BigDecimal;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * So many of a part whose serial numbers, or whose lot, somebody writes down: what picking and packing leave boxes for.
 *
 * @param quantity in the part's unit, without spares
 */
public record Numbered(Part part, BigDecimal quantity) {

    /** One piece, or two neighbours whose numbers are written in one line. */
    public record Line(Numbered of, int piece) {

        /** The only number of its part. */
        public boolean isOne() {
            return of.numbers() == 1;
        }

        public boolean isTwo() {
            return piece < of.numbers();
        }

        /** '3' or '3, 4'. */
        public String pieces() {
            return isTwo() ? piece + ", " + (piece + 1) : String.valueOf(piece);
        }
    }

    /** How many numbers are written down: one for each piece with a serial number, one for a lot. */
    public int numbers() {
        return part.tracked() == null ? 0 : isLot() ? 1 : quantity.intValue();
    }

    public boolean isLot() {
        return part.tracked() == Tracked.LOT;
    }

    /** Piece by piece, two in a line. */
    public Stream<Line> lines() {
        return IntStream.iterate(1, piece -> piece <= numbers(), piece -> piece + 2)
                .mapToObj(piece -> new Line(this, piece));
    }
}

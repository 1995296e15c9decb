package boltlore.trades.cutting.packing;

/**
 * Pieces that are all alike, or sets of pieces that come off one bar together.
 *
 * @param length that one takes up on a bar when its slanted ends lie against others of their slant, above 0
 * @param count how many are wanted, at least 1
 */
public record PieceType(long length, Ends ends, int count) {

    public PieceType {
        if (length <= 0 || count <= 0) {
            throw new IllegalArgumentException("A kind has a length and a count above 0: " + length + " x " + count);
        }
    }
}

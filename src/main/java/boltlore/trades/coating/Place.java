package boltlore.trades.coating;

/**
 * Where a piece hangs.
 *
 * @param rail the first of the rails that it takes up, from 1 at the left wall
 * @param rails that it takes up side by side
 * @param fromMm from the door to its near edge
 * @param topMm from the rail down to its upper edge; above 0 it hangs below another piece
 */
public record Place(HungPiece piece, int rail, int rails, int fromMm, int topMm) {

    int toMm() {
        return fromMm + piece.size().alongMm();
    }

    int bottomMm() {
        return topMm + piece.size().downMm();
    }
}

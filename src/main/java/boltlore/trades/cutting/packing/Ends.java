package boltlore.trades.cutting.packing;

/**
 * How many ends of one slant the pieces of a kind bring.
 *
 * @param slant which slant, from 0; -1 where all ends are square
 * @param single pieces with one such end
 * @param both pieces with two such ends
 */
public record Ends(int slant, int single, int both) {

    public static final Ends SQUARE = new Ends(-1, 0, 0);

    boolean slanted() {
        return slant >= 0;
    }

    /**
     * How many slanted ends of a row lie against no other of the same slant, with the pieces turned as suits best: the two
     * outer ends where every piece has two, else one where their number is odd.
     */
    static int exposed(int single, int both) {
        if (single == 0) {
            return both == 0 ? 0 : 2;
        }
        return single % 2;
    }
}

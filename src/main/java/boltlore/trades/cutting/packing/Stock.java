package boltlore.trades.cutting.packing;

/**
 * Bars of one length.
 *
 * @param room what the kinds on one bar may take up
 * @param cost of one, in the smallest unit of money; 0 for what is at hand
 * @param most how many there are
 */
public record Stock(long room, long cost, int most) {

    public static final int ANY_NUMBER = Integer.MAX_VALUE;

    public static Stock toBuy(long room, long cost) {
        return new Stock(room, cost, ANY_NUMBER);
    }

    public static Stock atHand(long room) {
        return new Stock(room, 0, 1);
    }

    public boolean isBought() {
        return most == ANY_NUMBER;
    }
}

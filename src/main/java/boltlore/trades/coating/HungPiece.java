package boltlore.trades.coating;

/**
 * One piece of a load.
 *
 * @param number of its row in the load, from 1, by which the drawing names it
 */
public record HungPiece(int number, BatchRow row, Hung size) {}
